#pragma once

#include "model/garden/tree.hpp"

#include <cstddef>
#include <optional>
#include <utility>
#include <vector>

namespace app {

/// What is drawn of each limb, kept from one drawing of a tree to the next: made anew only for a
/// limb that has moved or is seen otherwise.
/// \tparam Seen   with ==: all that the drawing depends on besides the limb
/// \tparam Drawn  the drawing
template <typename Seen, typename Drawn>
class KeptByLimb {
public:
    /// \param index  of the limb in Tree::limbs \param make  of no arguments, makes the drawing
    /// \returns good until the next limb is asked for
    template <typename Make>
    const Drawn& drawn(std::size_t index, const model::Limb& limb, const Seen& seen, Make make)
    {
        if (index >= kept_.size())
            kept_.resize(index + 1);
        auto& kept = kept_[index];
        if (!kept || kept->seen != seen || kept->limb != limb)
            kept.emplace(Kept{limb, seen, make()});
        return kept->drawn;
    }

private:
    struct Kept {
        model::Limb limb;
        Seen seen;
        Drawn drawn;
    };
    std::vector<std::optional<Kept>> kept_; ///< by Tree::limbs
};

} // namespace app
