#include "app/assess/outlook_works.hpp"

#include "model/assessment/find_tree.hpp"
#include "model/light/daylight.hpp"

namespace app {
namespace {

/// A tree with its leaf and what stands around it.
struct Patient {
    Patient(const OutlookAsk& ask, const model::Tables& tables)
        : found(findTree(*ask.garden, tables, ask.tree)),
          foliations(model::light::foliations(*ask.garden, tables)), around{tables, foliations},
          foliation(foliations.at(static_cast<std::size_t>(&found.tree - ask.garden->trees.data())))
    {
    }
    [[nodiscard]] model::advice::Aim aim() const
    {
        return {.spare_m = 0.0, .goals = {}, .around = &around};
    }

    model::FoundTree found;
    std::vector<model::Foliation> foliations;
    model::advice::Surroundings around;
    const model::Foliation& foliation;
};

} // namespace

OutlookWorks modelOutlookWorks(const model::Tables& tables)
{
    return {.offers =
                [&tables](const OutlookAsk& ask, const std::atomic<bool>& cancel) {
                    const Patient patient(ask, tables);
                    return model::advice::tradeOffs(*ask.garden, patient.found.tree,
                                                    patient.foliation, patient.found.species,
                                                    ask.date, patient.aim(), &cancel);
                },
            .stages =
                [&tables](const OutlookAsk& ask, const model::advice::Suggestion& first,
                          const std::atomic<bool>& cancel) {
                    const Patient patient(ask, tables);
                    return model::advice::stages(*ask.garden, patient.found.tree, patient.foliation,
                                                 patient.found.species, first, ask.date,
                                                 patient.aim(), &cancel);
                }};
}

} // namespace app
