#include "app/paper/figures.hpp"

#include "app/drawing/load_scale.hpp"
#include "app/drawing/plan_painter.hpp"
#include "app/drawing/side_bearing.hpp"
#include "app/drawing/side_painter.hpp"
#include "app/paper/month_bars.hpp"
#include "app/paper/paper_palette.hpp"
#include "app/words/light_words.hpp"

#include <QFont>
#include <QImage>

#include <algorithm>

namespace app {
namespace {

constexpr double kRoomForFigures = 500.0; // pixels

/// What a side view is drawn from, kept for as long as the figure.
struct SideKept {
    std::shared_ptr<const model::Garden> garden;
    model::Tree drawn;
    model::Tree shown;
    model::load::TreeLoad loads; ///< of `shown`
    std::vector<model::headroom::StripHeadroom> headroom;
    std::vector<model::advice::PlannedCut> cuts;
    Units units;
};

std::optional<LimbShade> shadeOf(const SideKept& kept, const std::string& limb)
{
    const auto index = limbIndex(kept.shown, limb);
    for (const auto& load : kept.loads.limbs)
        if (load.limb == index)
            return LimbShade{load.utilisation, load.hasStrength};
    return std::nullopt;
}

std::function<void(QPainter&)> sidePainter(std::shared_ptr<const SideKept> kept, QSizeF canvas)
{
    return [kept, canvas](QPainter& painter) {
        const double bearing_deg = tellingBearing_deg(*kept->garden, kept->drawn);
        const auto first = fittedSideFrame(kept->drawn, bearing_deg, canvas);
        const auto frame = fittedSideFrame(kept->drawn, bearing_deg, canvas,
                                           groundRows(*kept->garden, kept->drawn, first, canvas));
        const SideInput input{*kept->garden,
                              kept->drawn,
                              kept->shown,
                              frame,
                              canvas,
                              kept->units,
                              [&](const std::string& limb) { return shadeOf(*kept, limb); },
                              &kept->headroom,
                              kept->cuts.empty() ? nullptr : &kept->cuts,
                              {},
                              1.0};
        auto scene = sideScene(input);
        if (canvas.width() < kRoomForFigures)
            scene.figures.clear(); // they would hide the numbers of the cuts
        paintSide(painter, scene, paperPalette());
    };
}

QString tintsCaption(const Units& units)
{
    QStringList steps;
    const auto words = loadStepWords();
    for (qsizetype i = 0; i < words.size(); ++i)
        steps << Words::tr("%1 (from %2)")
                     .arg(words[i], units.share(kLoadSteps[static_cast<std::size_t>(i)]));
    return Words::tr("Limbs, lightest tint first: %1 of their expected strength in the gust.")
        .arg(steps.join(QStringLiteral(", ")));
}

const model::light::SurfaceLight* sameSurface(const model::LightYear& year,
                                              const model::light::SurfaceLight& as)
{
    for (const auto& surface : year.surfaces)
        if (surface.light.planting == as.planting && surface.light.facing_deg == as.facing_deg)
            return &surface.light;
    return nullptr;
}

std::optional<double> needed_h(const PaperReport& report, const model::Tables& tables,
                               const std::string& planting)
{
    const auto found = std::ranges::find(report.garden->plantings, planting, &model::Planting::id);
    const auto* plant = findPlant(tables, found->plant);
    return plant ? plant->minSun_h : std::nullopt;
}

} // namespace

QString fileName(const std::string& text)
{
    QString name = QString::fromStdString(text).toLower();
    for (QChar& letter : name)
        if (!letter.isLetterOrNumber())
            letter = QLatin1Char('-');
    return name;
}

QFont paperFont(int pixelSize, bool bold)
{
    QFont font;
    font.setFamilies({QStringLiteral("DejaVu Sans Condensed"), QStringLiteral("DejaVu Sans")});
    font.setStyleHint(QFont::SansSerif);
    font.setPixelSize(pixelSize);
    font.setBold(bold);
    font.setHintingPreference(QFont::PreferNoHinting);
    // Any spacing at all keeps "fi" two letters, which a search in the PDF finds.
    font.setLetterSpacing(QFont::AbsoluteSpacing, 0.002 * pixelSize);
    return font;
}

Figure cutsFigure(const PaperReport& report, const model::TreeAssessment& of, const Units& units,
                  QSizeF canvas)
{
    const auto& tree = treeWithId(*report.garden, of.tree);
    auto kept = std::make_shared<SideKept>(
        SideKept{report.garden, tree, tree, of.load, of.headroom, of.suggestion.cuts, units});
    const auto side = Units::bearing(tellingBearing_deg(*report.garden, tree));
    const QString what =
        of.suggestion.cuts.empty()
            ? Words::tr("The tree as it stands, looking %1.").arg(side)
            : Words::tr("The tree as it stands, looking %1. Numbers: the cuts, in working order.")
                  .arg(side);
    return {fileName(of.tree) + QStringLiteral("-cuts"),
            what + QLatin1Char(' ') + tintsCaption(units), what, canvas,
            sidePainter(std::move(kept), canvas)};
}

Figure afterFigure(const PaperReport& report, const model::TreeAssessment& of, const Units& units,
                   QSizeF canvas)
{
    const auto& tree = treeWithId(*report.garden, of.tree);
    auto kept = std::make_shared<SideKept>(SideKept{
        report.garden, tree, treeAfter(tree, of), of.loadAfter, of.suggestion.after, {}, units});
    const QString what = Words::tr("After the cuts; what has gone is dashed.");
    return {fileName(of.tree) + QStringLiteral("-after"), what, what, canvas,
            sidePainter(std::move(kept), canvas)};
}

Figure planFigure(const PaperReport& report, const model::Tree* tree, const Units& units,
                  QSizeF canvas)
{
    const std::string chosen = tree ? tree->id : std::string();
    const auto paint = [garden = report.garden, chosen, units, canvas](QPainter& painter) {
        const model::Tree* marked = chosen.empty() ? nullptr : &treeWithId(*garden, chosen);
        const auto frame = fittedPlanFrame(*garden, marked, canvas);
        const PlanInput input{
            *garden, marked,  frame, marked ? tellingBearing_deg(*garden, *marked) : 0.0,
            nullptr, nullptr, units, nullptr};
        paintPlan(painter, planScene(input), paperPalette());
    };
    const QString what = tree ? Words::tr("From above, north up; dashed: where the side view is "
                                          "seen from.")
                              : Words::tr("The garden from above, north up.");
    return {chosen.empty() ? QStringLiteral("plan") : fileName(chosen) + QStringLiteral("-plan"),
            what, what, canvas, paint};
}

std::vector<Figure> lightFigures(const PaperReport& report, const model::Tables& tables,
                                 const Units& units, QSizeF canvas)
{
    constexpr std::size_t kMost = 6;
    auto surfaces = report.light.surfaces;
    std::ranges::stable_partition(surfaces,
                                  [](const auto& each) { return !each.light.facing_deg; });
    std::vector<Figure> figures;
    for (const auto& surface : surfaces) {
        if (figures.size() == kMost)
            break;
        const auto* after = sameSurface(report.lightAfter, surface.light);
        auto kept = std::make_shared<std::pair<MonthBars, model::light::SurfaceLight>>();
        kept->first.now = surface.light;
        kept->first.needed_h = needed_h(report, tables, surface.light.planting);
        if (after) {
            kept->second = *after;
            kept->first.after = &kept->second;
        }
        const QString name = capitalised(surfaceName(surface.light, *report.garden));
        const QString what = Words::tr("%1: hours of direct sun a day, month by month").arg(name);
        figures.push_back(
            {QStringLiteral("sun-%1-%2")
                 .arg(fileName(surface.light.planting), QString::number(figures.size() + 1)),
             what, what, canvas, [kept, canvas, units](QPainter& painter) {
                 paintMonthBars(painter, canvas, kept->first, units, paperPalette());
             }});
    }
    return figures;
}

QImage picture(const Figure& figure, double scale)
{
    QImage image((figure.canvas * scale).toSize(), QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(scale, scale);
    painter.setFont(paperFont(12));
    figure.paint(painter);
    return image;
}

} // namespace app
