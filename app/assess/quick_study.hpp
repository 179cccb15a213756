#pragma once

#include "app/assess/answers.hpp"
#include "model/crown/foliage_study.hpp"
#include "model/load/load_study.hpp"
#include "model/load/sag.hpp"

#include <optional>

namespace app {

/// Quick answers about a tree that is drawn on: what a dragged limb leaves alone is kept from one
/// answer to the next. For one thread at a time.
class QuickStudy {
public:
    /// \param tables  outlives it
    explicit QuickStudy(const model::Tables& tables) : tables_(tables) {}
    [[nodiscard]] QuickAnswer answer(const Ask& ask);

private:
    /// With any of these another, nothing can be kept.
    struct Asked {
        std::string tree;
        std::string species;
        model::Place place;
        model::Exposure exposure{};
        model::load::Conditions conditions;
        friend bool operator==(const Asked&, const Asked&) = default;
    };
    [[nodiscard]] const model::load::TreeLoad&
    load(const model::Tree& tree, const model::Species& species, const Asked& asked);

    const model::Tables& tables_;
    std::optional<Asked> asked_;
    std::optional<model::FoliageStudy> leaf_;
    model::Foliation foliation_;
    std::optional<model::load::LoadStudy> load_;
    model::load::Rest rest_; ///< where the tree hung last
};

} // namespace app
