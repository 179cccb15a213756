#pragma once

#include "app/words/wording.hpp"
#include "model/assessment/cut_explanation.hpp"
#include "model/assessment/light_year.hpp"
#include "model/assessment/limb_explanation.hpp"
#include "model/assessment/strip_explanation.hpp"
#include "model/assessment/sun_explanation.hpp"
#include "model/light/year_light.hpp"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

namespace app {

/// One step of a chain: what it gives, how much, and where that comes from.
struct ChainStep {
    QString name;
    QString value;
    QString origin; ///< the formula's number and the source; empty: it follows from the steps above
};

/// Steps that belong together.
struct ChainPart {
    QString heading;
    std::vector<ChainStep> steps;
    QStringList remarks;
};

/// From what was drawn and what was published to a figure that the gardener is shown.
struct Chain {
    QString title;
    QString answer; ///< the figure itself, in a sentence
    QString about;  ///< what it was reckoned for
    QString method; ///< the page that holds the numbered formulas: "docs/methods/load.md"
    std::vector<ChainPart> parts;
};

/// A limb's load and the gust that breaks it.
[[nodiscard]] Chain chainOf(const model::LimbExplanation& of, const Wording& wording,
                            const model::Sources& sources);

/// The headroom under a tree over a strip.
[[nodiscard]] Chain chainOf(const model::StripExplanation& of, const Wording& wording);

/// A planting's direct sun on a clear day.
[[nodiscard]] Chain chainOf(const model::SunExplanation& of, const model::Garden& garden,
                            const model::Tables& tables, const Units& units);

/// Light of a mean day on one surface.
struct YearAsked {
    const model::light::SurfaceLight& surface;
    const model::light::Weather& weather;
    std::optional<int> month; ///< 0 .. 11; blank: the growing season
};
[[nodiscard]] Chain chainOf(const YearAsked& of, const model::Garden& garden,
                            const model::Tables& tables, const Units& units);

/// What one cut by itself gives back to a surface, on a mean day of the growing season.
struct GainAsked {
    const model::light::SurfaceLight& surface;
    const model::light::Weather& weather;
    const model::CutLight& cut;
    const model::CutExplanation& taken; ///< by the same cut
};
[[nodiscard]] Chain chainOf(const GainAsked& of, const model::Garden& garden,
                            const model::Tables& tables, const Wording& wording);

/// What a plant needs, as the tables have it; nothing where they don't.
[[nodiscard]] std::optional<ChainPart> needPart(const model::Plant& plant,
                                                const model::Tables& tables, const Units& units);

/// The leaf and the weight that cuts take. \param what  which cuts: "Take off “path limb”"
[[nodiscard]] Chain chainOf(const model::CutExplanation& of, const QString& what,
                            const Wording& wording, const model::Sources& sources);

/// Who should do a job: each rule that decided, its threshold and who published it.
[[nodiscard]] Chain chainOf(const model::advice::Labour& labour, const Wording& wording);

/// "L10; handbook": a formula's number and a source, which is written out if it is a key of the
/// tables.
[[nodiscard]] QString originWords(const QString& formula, const std::string& source,
                                  const model::Sources& sources = {});

} // namespace app
