#include "model/load/mixing.hpp"

#include <algorithm>
#include <array>
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

Mixing::Mixing(const std::vector<double>& weights) : squares_(weights)
{
    for (double& weight : squares_)
        weight *= weight;
}

/// Summed in four lanes, which a processor adds up side by side.
double Mixing::product(const std::vector<double>& a, const std::vector<double>& b) const
{
    std::array<double, 4> lanes{};
    std::size_t i = 0;
    for (; i + lanes.size() <= a.size(); i += lanes.size())
        for (std::size_t lane = 0; lane < lanes.size(); ++lane)
            lanes[lane] += squares_[i + lane] * a[i + lane] * b[i + lane];
    for (; i < a.size(); ++i)
        lanes[0] += squares_[i] * a[i] * b[i];
    return (lanes[0] + lanes[1]) + (lanes[2] + lanes[3]);
}

/// Of each remembered step, to be taken back so that least of `missing` is left.
std::vector<double> Mixing::shares(const std::vector<double>& missing) const
{
    std::vector<std::vector<double>> square;
    std::vector<double> across;
    for (std::size_t i = 0; i < learnt_.size(); ++i) {
        square.emplace_back(products_[i].begin(), products_[i].end());
        across.push_back(product(learnt_[i].change, missing));
    }
    return solved(std::move(square), std::move(across));
}

/// Remembers the last step and how it changed what is missing.
void Mixing::learn(const std::vector<double>& missing)
{
    Learnt next;
    if (learnt_.size() == kRemembered) {
        next = std::move(learnt_.front());
        learnt_.pop_front();
        products_.pop_front();
        for (auto& row : products_)
            row.pop_front();
    }
    next.change.resize(missing.size());
    next.whole.resize(missing.size());
    for (std::size_t i = 0; i < missing.size(); ++i) {
        next.change[i] = missing[i] - lastMissing_[i];
        next.whole[i] = step_[i] + next.change[i];
    }
    learnt_.push_back(std::move(next));
    auto& newest = products_.emplace_back();
    for (std::size_t k = 0; k < learnt_.size(); ++k) {
        newest.push_back(product(learnt_[k].change, learnt_.back().change));
        if (k + 1 < learnt_.size())
            products_[k].push_back(newest.back());
    }
}

const std::vector<double>& Mixing::step(const std::vector<double>& missing)
{
    const double left = product(missing, missing);
    const bool astray = least_ >= 0.0 && left > kWorse * least_;
    if (astray) {
        learnt_.clear();
        products_.clear();
        least_ = left;
    } else if (!lastMissing_.empty()) {
        learn(missing);
    }
    least_ = least_ < 0.0 ? left : std::min(least_, left);
    step_ = missing;
    if (astray)
        for (double& part : step_)
            part *= kCautious;
    const auto back = shares(missing);
    for (std::size_t k = 0; k < back.size(); ++k)
        for (std::size_t i = 0; i < step_.size(); ++i)
            step_[i] -= back[k] * learnt_[k].whole[i];
    lastMissing_ = missing;
    return step_;
}

} // namespace model::load
