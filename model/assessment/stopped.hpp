#pragma once

#include <atomic>

namespace model {

/// Whether whoever asked has lost interest; null: nobody ever does.
[[nodiscard]] inline bool stopped(const std::atomic<bool>* cancel)
{
    return cancel && cancel->load(std::memory_order_relaxed);
}

} // namespace model
