#include "model/load/quasi_random.hpp"

#include <boost/math/special_functions/erf.hpp>
#include <boost/random/sobol.hpp>

#include <numbers>

namespace model::load {

std::vector<double> sobolPoints(std::size_t count, std::size_t dimensions)
{
    boost::random::sobol engine(dimensions); // leaves the first point, the cube's corner, out
    const double steps = static_cast<double>(boost::random::sobol::max()) + 1.0;
    std::vector<double> points(count * dimensions);
    for (double& value : points) // the middle of its cell, so that none is 0
        value = (static_cast<double>(engine()) + 0.5) / steps;
    return points;
}

double normalQuantile(double probability)
{
    // In doubles throughout: long doubles would cost more than all else of a range.
    using Plain = boost::math::policies::policy<boost::math::policies::promote_double<false>>;
    return std::numbers::sqrt2 * boost::math::erf_inv(2.0 * probability - 1.0, Plain());
}

} // namespace model::load
