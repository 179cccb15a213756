#pragma once

#include "app/assess/sun_map.hpp"
#include "app/format/units.hpp"
#include "model/garden/garden.hpp"
#include "model/light/shadow_study.hpp"

#include <QLineF>
#include <QPainterPath>
#include <QPointF>
#include <QRectF>
#include <QSizeF>
#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

/// The plan of the garden as shapes on the canvas: north up, pixels, y down.
namespace app {

/// The plan's camera.
struct PlanFrame {
    model::Point2 middle_m{};    ///< garden frame, drawn in the middle of the canvas
    double pixelsPerMetre{10.0}; ///< > 0
    QSizeF canvas;

    [[nodiscard]] QPointF toCanvas(model::Point2 place_m) const;
    [[nodiscard]] model::Point2 toPlace(QPointF point) const;
    friend bool operator==(const PlanFrame&, const PlanFrame&) = default;
};

/// The frame that shows the whole garden, and room around the chosen tree to walk round it.
/// \param covered  pixels along the top of the canvas under which nothing should lie
[[nodiscard]] PlanFrame fittedPlanFrame(const model::Garden& garden, const model::Tree* chosen,
                                        QSizeF canvas, double covered = 0.0);

enum class PlanKind { strip, hedge, shrub, bed, lawn, building, fence, glasshouse, pond };

struct PlanShape {
    PlanKind kind{};
    QString name;
    QPolygonF outline;
    QPointF nameAt;
};

struct PlanTree {
    QPainterPath crown; ///< leafy bodies from above
    QPointF stem;
    double stemRadius{};
    QString name;
    bool chosen{};
};

/// Sun over the ground, one pixel of `hours` for each point of the map.
struct PlanMap {
    QRectF target; ///< on the canvas
    int columns{};
    int rows{};
    std::vector<double> share; ///< of the open sky's sun, rows from south to north
    QStringList scale;         ///< the words under the ends of the scale, darkest first
};

struct PlanScene {
    QSizeF canvas;
    double underButtons{};      ///< pixels along the top that something lies on; no names there
    std::optional<PlanMap> map; ///< in place of the shadow of the hour
    std::vector<PlanShape> shapes;
    std::vector<PlanTree> trees;
    std::vector<QPainterPath> wires;
    QPainterPath shadow;
    QPointF eye;                  ///< where the gardener of the side view stands
    QLineF gaze;                  ///< from there to the stem
    std::optional<QLineF> sunRay; ///< from the edge of the plan to the chosen tree; blank at night
    std::optional<QLineF> wind;   ///< towards the chosen tree, as the worst wind blows
    QString windText;             ///< what it is the worst for
    QLineF scaleBar;
    QString scaleText;
    QPolygonF chosen;   ///< outline of the thing that is being changed; empty: none
    QPolygonF draft;    ///< corners drawn so far, and where the hand is
    bool draftCloses{}; ///< the draft is an outline, not a wire
};

struct PlanInput {
    const model::Garden& garden;
    const model::Tree* chosen{}; ///< one of the garden's; null: a garden without trees
    const PlanFrame& frame;
    double bearing_deg{};                   ///< of the side view
    const model::light::Shadows* shadows{}; ///< null: not known yet
    const model::light::SunPosition* sun{}; ///< null: not known yet
    const Units& units;
    const SunMap* map{};              ///< null: not shown
    std::optional<double> wind_deg{}; ///< the worst wind comes from there; blank: none
    QString windText{};
};

[[nodiscard]] PlanScene planScene(const PlanInput& input);

/// How far from the stem the gardener of the side view is drawn, pixels.
[[nodiscard]] double eyeDistance(const model::Tree& tree, const PlanFrame& frame);

} // namespace app
