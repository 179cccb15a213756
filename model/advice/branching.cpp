#include "model/advice/branching.hpp"

#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

namespace model::advice {
namespace {

constexpr double kInBlend = 1e-7;

class Splitter {
public:
    Splitter(const Allowed& allowed, const NodeBound& found, const Bounder& bounder)
        : allowed_(allowed), found_(found), bounder_(bounder), tree_(bounder.tree())
    {
    }

    /// The limb that the blend is least sure about; if it is sure of all of them, the one that
    /// matters most; the number of limbs if there is none.
    std::size_t limb() const
    {
        std::size_t best = tree_.limbs();
        double most = 0.0;
        for (std::size_t limb = 0; limb < tree_.limbs(); ++limb) {
            double sum = 0.0;
            double squares = 0.0;
            double low = ChoiceTree::kNever;
            double high = 0.0;
            for (const auto o : open(limb)) {
                const double w = found_.weight[o];
                sum += w;
                squares += w * w;
                if (w > kInBlend) {
                    low = std::min(low, tree_.option(o).leaf);
                    high = std::max(high, tree_.option(o).leaf);
                }
            }
            if (sum <= kInBlend)
                continue;
            const double unsure = (sum * sum - squares) * (1e-3 + high - low);
            if (sum * sum - squares > kInBlend && unsure > most) {
                most = unsure;
                best = limb;
            }
        }
        return best < tree_.limbs() ? best : limbThatMatters();
    }

    /// The options of a limb up to the mean of the blend, by leaf; if that splits nothing, the
    /// heaviest alone.
    std::vector<bool> lowHalf(std::size_t limb) const
    {
        const auto options = open(limb);
        double weight = 0.0;
        double mean = 0.0;
        for (const auto o : options) {
            weight += found_.weight[o];
            mean += found_.weight[o] * tree_.option(o).leaf;
        }
        mean /= weight;
        std::vector<bool> half(tree_.first(limb + 1) - tree_.first(limb));
        bool low = false;
        bool high = false;
        for (const auto o : options) {
            const bool is = tree_.option(o).leaf <= mean;
            half[o - tree_.first(limb)] = is;
            if (found_.weight[o] > kInBlend)
                (is ? low : high) = true;
        }
        if (low && high)
            return half;
        const auto heaviest =
            std::ranges::max_element(options, {}, [&](std::size_t o) { return found_.weight[o]; });
        half.assign(half.size(), false);
        half[*heaviest - tree_.first(limb)] = true;
        return half;
    }

private:
    std::vector<std::size_t> open(std::size_t limb) const
    {
        std::vector<std::size_t> all;
        for (std::size_t o = tree_.first(limb); o < tree_.first(limb + 1); ++o)
            if (allowed_[o] != 0)
                all.push_back(o);
        return all;
    }

    std::size_t limbThatMatters() const
    {
        std::size_t best = tree_.limbs();
        double most = -1.0;
        for (const auto pick : found_.cheapest) {
            const auto limb = tree_.limbOf(pick);
            const auto options = open(limb);
            if (options.size() < 2)
                continue;
            double matters = 0.0;
            for (const auto o : options) {
                matters =
                    std::max(matters, std::abs(tree_.option(o).leaf - tree_.option(pick).leaf));
                for (const auto& helps : bounder_.reach().helps)
                    matters = std::max(matters, std::abs(helps[o] - helps[pick]));
            }
            if (matters > most) {
                most = matters;
                best = limb;
            }
        }
        return best;
    }

    const Allowed& allowed_;
    const NodeBound& found_;
    const Bounder& bounder_;
    const ChoiceTree& tree_;
};

} // namespace

std::optional<Halves> halvesOf(const Allowed& allowed, const NodeBound& found,
                               const Bounder& bounder)
{
    const Splitter splitter(allowed, found, bounder);
    const auto& tree = bounder.tree();
    const auto limb = splitter.limb();
    if (limb == tree.limbs())
        return std::nullopt;
    Halves halves{allowed, allowed};
    double heavy = 0.0;
    double all = 0.0;
    const auto half = splitter.lowHalf(limb);
    for (std::size_t o = tree.first(limb); o < tree.first(limb + 1); ++o) {
        if (allowed[o] == 0)
            continue;
        const bool inHalf = half[o - tree.first(limb)];
        (inHalf ? halves.rest : halves.likelier)[o] = 0;
        heavy += inHalf ? found.weight[o] : 0.0;
        all += found.weight[o];
    }
    if (2.0 * heavy < all)
        std::swap(halves.likelier, halves.rest);
    return halves;
}

} // namespace model::advice
