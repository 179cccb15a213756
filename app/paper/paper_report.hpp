#pragma once

#include "app/paper/paper_photos.hpp"
#include "model/advice/day_check.hpp"
#include "model/assessment/assessment.hpp"
#include "model/assessment/light_year.hpp"

#include <memory>

namespace app {

/// Everything that a report tells, worked out once.
struct PaperReport {
    std::shared_ptr<const model::Garden> garden;
    model::Assessment assessment;
    model::LightYear light;            ///< of every planting, as things stand
    model::LightYear lightAfter;       ///< after all suggested cuts
    model::advice::DayWeather weather; ///< of the day of work, as far as it was given
    std::vector<PaperPhoto> photos;    ///< of the trees told about, drawn; may be empty
};

/// \pre  validate(garden, tables) found no fault
/// \param onlyTree  id; empty: every tree
[[nodiscard]] PaperReport paperReport(std::shared_ptr<const model::Garden> garden,
                                      const model::Tables& tables, const model::Question& question,
                                      const std::string& onlyTree,
                                      const std::atomic<bool>* cancel = nullptr);

/// The same around an assessment that is there already.
[[nodiscard]] PaperReport paperReport(std::shared_ptr<const model::Garden> garden,
                                      const model::Tables& tables, model::Assessment assessment,
                                      const std::atomic<bool>* cancel = nullptr);

/// One tree of a garden as its assessment cuts it.
[[nodiscard]] model::Tree treeAfter(const model::Tree& tree, const model::TreeAssessment& of);

/// The tree with this id. \pre  it is there
[[nodiscard]] const model::Tree& treeWithId(const model::Garden& garden, const std::string& id);

} // namespace app
