#include "model/load/mixing.hpp"

#include <cmath>
#include <utility>

namespace model::load {
namespace {

constexpr std::size_t kRemembered = 10;
constexpr double kWorse = 100.0;   // of the sum of squares: what was learnt leads astray
constexpr double kCautious = 0.25; // of what is missing, after that

/// Solves a x = b for a symmetric matrix that may be near singular: the smaller the pivot, the less
/// its unknown is trusted.
std::vector<double> solved(std::vector<std::vector<double>> a, std::vector<double> b)
{
    constexpr double kTrust = 1e-12;
    const std::size_t n = b.size();
    double greatest = 0.0;
    for (std::size_t i = 0; i < n; ++i)
        greatest = std::max(greatest, a[i][i]);
    for (std::size_t i = 0; i < n; ++i)
        a[i][i] += kTrust * greatest;
    for (std::size_t i = 0; i < n; ++i)
        for (std::size_t k = i + 1; k < n; ++k) {
            const double factor = a[i][i] != 0.0 ? a[k][i] / a[i][i] : 0.0;
            for (std::size_t j = i; j < n; ++j)
                a[k][j] -= factor * a[i][j];
            b[k] -= factor * b[i];
        }
    for (std::size_t i = n; i-- > 0;) {
        for (std::size_t j = i + 1; j < n; ++j)
            b[i] -= a[i][j] * b[j];
        b[i] = a[i][i] != 0.0 ? b[i] / a[i][i] : 0.0;
    }
    return b;
}

} // namespace

double Mixing::product(const std::vector<double>& a, const std::vector<double>& b) const
{
    double sum = 0.0;
    for (std::size_t i = 0; i < a.size(); ++i)
        sum += weights_[i] * weights_[i] * a[i] * b[i];
    return sum;
}

/// Of each remembered step, to be taken back so that least of `missing` is left.
std::vector<double> Mixing::shares(const std::vector<double>& missing) const
{
    const std::size_t n = changes_.size();
    std::vector<std::vector<double>> square(n, std::vector<double>(n));
    std::vector<double> across(n);
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t j = 0; j <= i; ++j)
            square[i][j] = square[j][i] = product(changes_[i], changes_[j]);
        across[i] = product(changes_[i], missing);
    }
    return solved(std::move(square), std::move(across));
}

std::vector<double> Mixing::step(const std::vector<double>& missing)
{
    const double left = product(missing, missing);
    const bool astray = least_ >= 0.0 && left > kWorse * least_;
    if (astray) {
        steps_.clear();
        changes_.clear();
        least_ = left;
    } else if (!lastMissing_.empty()) {
        std::vector<double> change(missing.size());
        for (std::size_t i = 0; i < change.size(); ++i)
            change[i] = missing[i] - lastMissing_[i];
        steps_.push_back(lastStep_);
        changes_.push_back(std::move(change));
        if (steps_.size() > kRemembered) {
            steps_.pop_front();
            changes_.pop_front();
        }
    }
    least_ = least_ < 0.0 ? left : std::min(least_, left);
    std::vector<double> step(missing);
    if (astray)
        for (double& part : step)
            part *= kCautious;
    const auto back = shares(missing);
    for (std::size_t k = 0; k < back.size(); ++k)
        for (std::size_t i = 0; i < step.size(); ++i)
            step[i] -= back[k] * (steps_[k][i] + changes_[k][i]);
    lastMissing_ = missing;
    lastStep_ = step;
    return step;
}

} // namespace model::load
