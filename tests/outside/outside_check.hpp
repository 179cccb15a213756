#pragma once

#include <sstream>
#include <string>

/// Checks against something outside the program: a published figure, a closed form, a slow and
/// obvious reckoning. Each demands what its EXPECT_... sister of Google Test demands, and leaves a
/// record of what was expected and what came out, from which tests/outside/validation.py makes
/// docs/validation.md. The source is the comment above the test: it is written nowhere else.
///
/// What is streamed into a check names its case, on the page as in the failure:
///     OUTSIDE_NEAR(airMass(90.0), 1.0, 0.0005) << "sun overhead";

/// |computed - expected| <= tolerance, all in one unit.
#define OUTSIDE_NEAR(computed, expected, tolerance)                                                \
    ::outside::Check(::outside::near(computed, expected, tolerance),                               \
                     {#computed, __FILE__, __LINE__, ::outside::Demand::held})
/// low <= computed <= high.
#define OUTSIDE_WITHIN(computed, low, high)                                                        \
    ::outside::Check(::outside::within(computed, low, high),                                       \
                     {#computed, __FILE__, __LINE__, ::outside::Demand::held})
/// A published range that the model is known to miss: told on the page, held by a wider check.
#define OUTSIDE_TOLD(computed, low, high)                                                          \
    ::outside::Check(::outside::within(computed, low, high),                                       \
                     {#computed, __FILE__, __LINE__, ::outside::Demand::told})

namespace outside {

enum class Demand { held, told };

/// A figure beside the range that the outside gives for it.
struct Figure {
    double computed;
    double expected; ///< the middle, where the outside gives a range
    double tolerance;
    bool isRange;
};

Figure near(double computed, double expected, double tolerance);
Figure within(double computed, double low, double high);

struct Place {
    const char* what; ///< as it stands in the test
    const char* file;
    int line;
    Demand demand;
};

/// Judged and recorded when the statement ends, for the case's name is streamed into it.
class Check {
public:
    Check(Figure figure, Place place);
    ~Check();
    Check(const Check&) = delete;
    Check& operator=(const Check&) = delete;

    template <typename T>
    Check& operator<<(const T& part)
    {
        case_ << part;
        return *this;
    }

private:
    Figure figure_;
    Place place_;
    std::ostringstream case_;
};

} // namespace outside
