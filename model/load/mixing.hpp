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
    explicit Mixing(const std::vector<double>& weights);

    /// How far to go from here; good until the next is asked for.
    /// \param missing  f where x now is, one for each weight
    [[nodiscard]] const std::vector<double>& step(const std::vector<double>& missing);

private:
    /// What one step has taught.
    struct Learnt {
        std::vector<double> change; ///< of f by it
        std::vector<double> whole;  ///< the step and that change together
    };
    [[nodiscard]] double product(const std::vector<double>& a, const std::vector<double>& b) const;
    [[nodiscard]] std::vector<double> shares(const std::vector<double>& missing) const;
    void learn(const std::vector<double>& missing);

    std::vector<double> squares_; ///< of the weights
    std::vector<double> lastMissing_;
    std::vector<double> step_;
    double least_{-1.0};                      ///< sum of squares ever left
    std::deque<Learnt> learnt_;               ///< newest last
    std::deque<std::deque<double>> products_; ///< of each change with each
};

} // namespace model::load
