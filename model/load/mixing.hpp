#pragma once

#include <cstddef>
#include <deque>
#include <vector>

namespace model::load {

/// Seeks the rest of x -> x + f(x), whose f is dear: each step is the one that the last few steps
/// say would have left least of f, f taken as straight between them (Anderson 1965, J. ACM 12:547;
/// docs/methods/load.md, L29). Where f is straight in n unknowns it is at rest after n + 1 steps.
class Mixing {
public:
    /// \param weights  of each unknown, in the same unit of what is missing: what the steps make
    ///                 small is the sum of (weight x f)^2
    explicit Mixing(std::vector<double> weights) : weights_(std::move(weights)) {}

    /// How far to go from here. \param missing  f where x now is, one for each weight
    [[nodiscard]] std::vector<double> step(const std::vector<double>& missing);

private:
    [[nodiscard]] double product(const std::vector<double>& a, const std::vector<double>& b) const;
    [[nodiscard]] std::vector<double> shares(const std::vector<double>& missing) const;

    std::vector<double> weights_;
    std::vector<double> lastMissing_;
    std::vector<double> lastStep_;
    double least_{-1.0};                      ///< sum of squares ever left
    std::deque<std::vector<double>> steps_;   ///< taken, newest last
    std::deque<std::vector<double>> changes_; ///< of f by each
};

} // namespace model::load
