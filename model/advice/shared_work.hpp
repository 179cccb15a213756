#pragma once

#include "model/advice/suggestion.hpp"

#include <vector>

namespace model::advice {

/// How a job is shared between the gardener and an arborist.
struct SharedWork {
    std::vector<std::size_t> gardener; ///< indices of the suggestion's cuts, in working order
    std::vector<std::size_t> arborist;
    bool wholeTree{}; ///< what is wrong concerns the whole tree: every cut is the arborist's
};

/// Which cuts remain for the gardener when some of the work asks for an arborist
/// (docs/methods/advice.md, A4): not one that a rule on that cut or on the whole tree gives to an
/// arborist, nor one on a limb that an arborist's cut has to be made on first, nor one made under
/// a limb that is dead, cracked or expected to fail.
/// \param tree    as it was sketched
/// \param labour  for the tree as it stands and the job together
[[nodiscard]] SharedWork sharedWork(const Tree& tree, const Suggestion& suggestion,
                                    const Labour& labour);

} // namespace model::advice
