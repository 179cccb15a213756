#pragma once

#include "app/drawing/kept_by_limb.hpp"
#include "app/drawing/side_frame.hpp"
#include "app/format/units.hpp"
#include "model/advice/suggestion.hpp"
#include "model/garden/garden.hpp"
#include "model/headroom/headroom.hpp"

#include <QImage>
#include <QLineF>
#include <QPainterPath>
#include <QRectF>
#include <QString>
#include <QTransform>

#include <functional>
#include <optional>
#include <vector>

/// The side view as shapes on the canvas, in pixels, y down. Everything that is drawn is decided
/// here; the painter only chooses pens.
namespace app {

/// The wood of one limb.
struct SceneLimb {
    QPainterPath wood;
    std::optional<double> utilisation; ///< blank: not worked out
    bool hasStrength{true};            ///< false: dead or cracked
    bool chosen{};
    bool guessed{};     ///< its diameters are a guess
    std::size_t limb{}; ///< index into the limbs of the tree that is shown
};

/// The leaf of one limb: the outline of its leafy bodies and the shoots that hang from them.
struct SceneLeaf {
    QPainterPath bodies;
    QPainterPath dabs; ///< flecks of leaf inside the bodies
    std::vector<QLineF> shoots;
    double nearness{}; ///< 0 far side of the crown .. 1 near side
    bool chosen{};
    std::size_t limb{}; ///< index into the limbs of the tree that is shown
};

enum class Ground { strip, bed, lawn, pond };

/// Something flat, seen edge on in the ground line.
struct SceneBand {
    Ground kind{};
    QString name;
    double fromX{};
    double toX{};
    int row{}; ///< names that would meet go to another row
};

enum class Block { hedge, shrub, building, fence, glasshouse };

/// Something that stands up from the ground.
struct SceneBlock {
    Block kind{};
    QString name;
    QRectF outline;
    bool behind{}; ///< it lies beyond the tree's stem
};

/// A wire overhead.
struct SceneWire {
    QPainterPath path;
    QString name;
    QPointF nameAt;
};

/// Headroom that a strip needs, over its width, and what there is of it at the lowest place.
struct SceneHeadroom {
    QRectF needed; ///< from the ground to the needed height
    QString neededText;
    bool enough{};
    std::optional<QLineF> clear; ///< from the ground to the lowest leaf, shoot or wood
    QString clearText;
    std::optional<QLineF> missing; ///< from there to the needed height
    QString missingText;
};

/// Where to cut.
struct SceneCut {
    int number{};
    model::CutKind kind{};
    QLineF stroke; ///< across the limb; lifting: along the new hem
    QPointF badge;
};

/// A figure on a limb.
struct SceneFigure {
    QPointF at;
    QString text;
    bool chosen{};
};

/// A photo that the tree is drawn over.
struct SceneUnderlay {
    QImage image; ///< null: none
    QTransform toCanvas;
    double opacity{1.0};
    std::vector<QPointF> marks; ///< places pressed on it
};

struct SideScene {
    QSizeF canvas;
    SceneUnderlay underlay;
    double groundY{};
    double leafShare{1.0}; ///< 0 bare .. 1 full leaf
    std::vector<SceneBlock> blocks;
    std::vector<SceneWire> wires;
    std::vector<SceneBand> bands;
    std::vector<SceneLeaf> leaves;  ///< farthest first
    std::vector<SceneLimb> limbs;   ///< farthest first
    std::vector<QPainterPath> gone; ///< wood that the suggested cuts have taken
    std::vector<SceneHeadroom> needs;
    std::vector<SceneCut> cuts;
    std::vector<SceneFigure> figures;
    QLineF scaleBar;
    QString scaleText;
    double heightX{}; ///< where the tree's height is measured off
    double topY{};
    QString heightText;
};

/// A limb's load as a drawing needs it.
struct LimbShade {
    double utilisation{};
    bool hasStrength{true};
};

/// What stays of one drawing of a tree for the next, so that one that follows a hand draws only
/// what the hand moves.
struct KeptSide {
    struct LeafSeen {
        SideFrame frame;
        std::size_t firstBody{}; ///< its flecks are strewn by the number of the body in the tree
        friend bool operator==(const LeafSeen&, const LeafSeen&) = default;
    };
    KeptByLimb<LeafSeen, SceneLeaf> leaf;
    KeptByLimb<SideFrame, QPainterPath> wood;
};

/// What the side view is drawn from. Holds references: make it, draw, let it go.
struct SideInput {
    const model::Garden& garden;
    const model::Tree& drawn; ///< as the gardener drew it
    const model::Tree& shown; ///< the same, or what the suggested cuts leave of it
    const SideFrame& frame;
    QSizeF canvas;
    const Units& units;
    std::function<std::optional<LimbShade>(const std::string& limb)> load;
    const std::vector<model::headroom::StripHeadroom>* headroom{}; ///< null: not known yet
    const std::vector<model::advice::PlannedCut>* cuts{};          ///< null: no marks
    std::string chosenLimb;
    double leafShare{1.0}; ///< of the leaf the tree has in summer, on the day asked about
    KeptSide* kept{};      ///< null: all is drawn anew
};

[[nodiscard]] SideScene sideScene(const SideInput& input);

/// How many rows the names of what lies in the ground take, whichever way one looks; the most for
/// which there is room is 3.
[[nodiscard]] int groundRows(const model::Garden& garden, const model::Tree& tree, SideFrame frame,
                             QSizeF canvas);

/// The parts, each in a file of its own.
void addLimbs(SideScene& scene, const SideInput& input);
void addLeaves(SideScene& scene, const SideInput& input);
void addGround(SideScene& scene, const SideInput& input);
void addHeadroom(SideScene& scene, const SideInput& input);
void addCuts(SideScene& scene, const SideInput& input);

} // namespace app
