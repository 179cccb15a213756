#pragma once

// For .cpp files only. For x86-64, GCC makes a second version of each function marked
// UNDERBOUGH_WIDE, with four numbers to the step instead of two, and the program picks one when it
// starts. Both round alike: neither fuses a product with a sum.
// A build that is watched (tests/run --sanitize) has one version: what picks would run before what
// watches is ready.
#if defined(__GNUC__) && !defined(__clang__) && defined(__x86_64__) &&                             \
    !defined(__SANITIZE_ADDRESS__) && !defined(__SANITIZE_THREAD__)
#define UNDERBOUGH_WIDE __attribute__((target_clones("avx2", "default")))
#else
#define UNDERBOUGH_WIDE
#endif
#ifndef UNDERBOUGH_INLINE
#define UNDERBOUGH_INLINE inline __attribute__((always_inline))
#endif
