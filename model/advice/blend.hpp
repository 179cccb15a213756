#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace model::advice {

/// The cheapest blend of a few offers that gives all that is needed: a linear program of as many
/// rows as there are needs, solved anew from where it was when an offer comes in (the primal
/// simplex method, Dantzig 1951, with the inverse of the basis kept; from memory). What is short of
/// a need is bought at a price that nobody would pay if it could be had.
class Blend {
public:
    /// \param needs  per row
    explicit Blend(std::vector<double> needs);

    /// \param gives  per row
    void add(double cost, std::span<const double> gives);
    [[nodiscard]] std::size_t offers() const { return costs_.size(); }

    /// \pre  at least one offer
    void solve();

    /// After solve(): what one more of each need would cost, >= 0.
    [[nodiscard]] const std::vector<double>& prices() const { return prices_; }
    [[nodiscard]] double cost() const { return cost_; }
    /// Share of each offer in the blend.
    [[nodiscard]] std::vector<double> shares() const;

private:
    enum class Kind { offer, lacking, spare };
    struct Member {
        Kind kind{};
        std::size_t index{}; ///< of the offer, or of the row
    };
    [[nodiscard]] double costOf(const Member& member) const;
    [[nodiscard]] double entry(const Member& member, std::size_t row) const;
    void start();
    bool improve();
    void dual();

    std::vector<double> needs_;
    std::size_t rows_; ///< the needs, and that all shares make a whole
    std::vector<double> costs_;
    std::vector<double> gives_; ///< rows_ for each offer, the last of them 1
    std::vector<Member> basis_;
    std::vector<double> inverse_; ///< of the basis, row by row
    std::vector<double> amounts_; ///< of the basis
    std::vector<double> dual_;
    std::vector<double> prices_;
    std::vector<double> enters_;
    double cost_{};
};

} // namespace model::advice
