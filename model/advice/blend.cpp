#include "model/advice/blend.hpp"

#include <algorithm>
#include <limits>

namespace model::advice {
namespace {

constexpr double kShort = 100.0; ///< for all of a need; the whole tree's leaf is 1
constexpr double kGain = 1e-11;  ///< less is rounding
constexpr double kPivot = 1e-10;
constexpr int kPivotsMost = 400; ///< prices that are not the best are prices too

} // namespace

Blend::Blend(std::vector<double> needs)
    : needs_(std::move(needs)), rows_(needs_.size() + 1), inverse_(rows_ * rows_), amounts_(rows_),
      dual_(rows_), prices_(needs_.size()), enters_(rows_)
{
}

void Blend::add(double cost, std::span<const double> gives)
{
    costs_.push_back(cost);
    gives_.insert(gives_.end(), gives.begin(), gives.end());
    gives_.push_back(1.0);
}

double Blend::costOf(const Member& member) const
{
    return member.kind == Kind::offer     ? costs_[member.index]
           : member.kind == Kind::lacking ? kShort
                                          : 0.0;
}

double Blend::entry(const Member& member, std::size_t row) const
{
    if (member.kind == Kind::offer)
        return gives_[member.index * rows_ + row];
    return row != member.index ? 0.0 : member.kind == Kind::lacking ? 1.0 : -1.0;
}

/// All of the first offer; each row's rest is short or to spare.
void Blend::start()
{
    std::ranges::fill(inverse_, 0.0);
    basis_.clear();
    for (std::size_t row = 0; row + 1 < rows_; ++row) {
        const double rest = needs_[row] - gives_[row];
        const double sign = rest >= 0.0 ? 1.0 : -1.0;
        basis_.push_back({rest >= 0.0 ? Kind::lacking : Kind::spare, row});
        inverse_[row * rows_ + row] = sign;
        inverse_[row * rows_ + rows_ - 1] = -sign * gives_[row];
        amounts_[row] = sign * rest;
    }
    basis_.push_back({Kind::offer, 0});
    inverse_[rows_ * rows_ - 1] = 1.0;
    amounts_[rows_ - 1] = 1.0;
}

void Blend::dual()
{
    std::ranges::fill(dual_, 0.0);
    cost_ = 0.0;
    for (std::size_t i = 0; i < rows_; ++i) {
        const double cost = costOf(basis_[i]);
        cost_ += cost * amounts_[i];
        for (std::size_t row = 0; cost != 0.0 && row < rows_; ++row)
            dual_[row] += cost * inverse_[i * rows_ + row];
    }
}

/// One step of the simplex method. \return false if there is none
bool Blend::improve()
{
    Member best;
    double bestGain = kGain;
    const auto consider = [&](Member member, double reduced) {
        if (-reduced > bestGain) {
            bestGain = -reduced;
            best = member;
        }
    };
    for (std::size_t offer = 0; offer < costs_.size(); ++offer) {
        double reduced = costs_[offer];
        for (std::size_t row = 0; row < rows_; ++row)
            reduced -= dual_[row] * gives_[offer * rows_ + row];
        consider({Kind::offer, offer}, reduced);
    }
    for (std::size_t row = 0; row + 1 < rows_; ++row) {
        consider({Kind::lacking, row}, kShort - dual_[row]);
        consider({Kind::spare, row}, dual_[row]);
    }
    if (bestGain <= kGain)
        return false;
    std::size_t leaves = rows_;
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < rows_; ++i) {
        double sum = 0.0;
        for (std::size_t row = 0; row < rows_; ++row)
            sum += inverse_[i * rows_ + row] * entry(best, row);
        enters_[i] = sum;
        if (sum > kPivot && amounts_[i] / sum < least) {
            least = amounts_[i] / sum;
            leaves = i;
        }
    }
    if (leaves == rows_)
        return false;
    const double pivot = enters_[leaves];
    for (std::size_t row = 0; row < rows_; ++row)
        inverse_[leaves * rows_ + row] /= pivot;
    for (std::size_t i = 0; i < rows_; ++i) {
        if (i == leaves)
            continue;
        amounts_[i] = std::max(0.0, amounts_[i] - enters_[i] * least);
        for (std::size_t row = 0; row < rows_; ++row)
            inverse_[i * rows_ + row] -= enters_[i] * inverse_[leaves * rows_ + row];
    }
    amounts_[leaves] = least;
    basis_[leaves] = best;
    return true;
}

void Blend::solve()
{
    if (basis_.empty())
        start();
    for (int pivots = 0; pivots < kPivotsMost; ++pivots) {
        dual();
        if (!improve())
            break;
    }
    dual();
    for (std::size_t row = 0; row + 1 < rows_; ++row)
        prices_[row] = std::clamp(dual_[row], 0.0, kShort);
}

std::vector<double> Blend::shares() const
{
    std::vector<double> all(costs_.size(), 0.0);
    for (std::size_t i = 0; i < rows_; ++i)
        if (basis_[i].kind == Kind::offer)
            all[basis_[i].index] = amounts_[i];
    return all;
}

} // namespace model::advice
