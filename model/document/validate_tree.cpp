#include "model/document/check.hpp"

#include "model/garden/tree.hpp"

namespace model {
namespace {

void checkGoal(Check& check, const Path& path, const Goal& goal)
{
    check.name(path / "subject", goal.subject,
               goal.kind != GoalKind::relief && goal.kind != GoalKind::gust &&
                   goal.kind != GoalKind::leaf && goal.kind != GoalKind::openCentre);
    const Path value = path / "value";
    if (goal.kind == GoalKind::leaf && !goal.value)
        check.fault(value, "nothing", "a share of the leaf, 0 to 1");
    if (goal.kind == GoalKind::gust && !goal.value)
        check.fault(value, "nothing", "a gust in m/s, up to 100");
    if (goal.value && goal.kind == GoalKind::gust)
        check.positive(value, *goal.value, limits::kGust_m_s, "gust in m/s");
    if (goal.value && goal.kind == GoalKind::dli)
        check.within(value, *goal.value, 0.0, 100.0, "mol/m2 of light a day");
    if (goal.value && goal.kind == GoalKind::relief)
        check.positive(value, *goal.value, 10.0, "utilisation");
    if (goal.value && goal.kind == GoalKind::light)
        check.within(value, *goal.value, 0.0, 24.0, "hours of sun a day");
    if (goal.value && goal.kind == GoalKind::leaf)
        check.within(value, *goal.value, 0.0, 1.0, "a share of the leaf");
    const Path months = path / "months";
    check.atMost(months, goal.months.size(), 12, "months");
    for (std::size_t i = 0; i < goal.months.size(); ++i)
        check.within(months / i, goal.months[i], 1.0, 12.0, "a month");
}

void checkUnderlay(Check& check, const Path& path, const Underlay& underlay)
{
    const auto within = [&](const Path& where, double value, double most, const char* what) {
        check.within(where, value, -most, most, what);
    };
    const Path foot = path / "foot_px";
    within(foot / 0, underlay.foot_px.x, limits::kFoot_px, "pixels");
    within(foot / 1, underlay.foot_px.y, limits::kFoot_px, "pixels");
    within(path / "turned_deg", underlay.turned_deg, limits::kTurned_deg, "degrees");
    within(path / "tilt_deg", underlay.tilt_deg, limits::kTilt_deg, "degrees");
    check.within(path / "opacity", underlay.opacity, 0.0, 1.0, "a share");
}

} // namespace

void checkPhoto(Check& check, const Path& path, const Photo& photo)
{
    if (check.name(path / "file", photo.file, true) &&
        (photo.file.front() == '/' || photo.file.find("..") != std::string::npos))
        check.fault(path / "file", inQuotes(photo.file),
                    "a file beside the garden or in a folder below it");
    if (photo.metresPerPixel)
        check.positive(path / "metres_per_pixel", *photo.metresPerPixel, 10.0,
                       "metres for one pixel");
    if (photo.viewBearing_deg)
        check.within(path / "view_bearing_deg", *photo.viewBearing_deg, 0.0, 360.0,
                     "a compass bearing in degrees");
    if (photo.underlay)
        checkUnderlay(check, path / "underlay", *photo.underlay);
    check.note(path / "note", photo.note);
}

void checkTree(Check& check, const Path& path, const Tree& tree, std::set<std::string>& ids)
{
    check.id(path / "id", tree.id, ids);
    check.name(path / "name", tree.name, false);
    check.name(path / "species", tree.species, true);
    check.place(path / "position_m", tree.position_m);
    if (tree.plantedYear)
        check.within(path / "planted_year", *tree.plantedYear, 1000.0, 2200.0, "a year");
    check.leafDates(path, tree.leafDates);
    checkLimbs(check, path / "limbs", tree.limbs);
    const Path observations = path / "observations";
    check.atMost(observations, tree.observations.size(), limits::kObservations, "observations");
    for (std::size_t i = 0; i < tree.observations.size(); ++i) {
        const Path observation = observations / i;
        check.note(observation / "note", tree.observations[i].note);
    }
    const Path photos = path / "photos";
    check.atMost(photos, tree.photos.size(), limits::kPhotos, "photos");
    for (std::size_t i = 0; i < tree.photos.size(); ++i)
        checkPhoto(check, photos / i, tree.photos[i]);
    const Path goals = path / "goals";
    check.atMost(goals, tree.goals.size(), limits::kGoals, "goals");
    for (std::size_t i = 0; i < tree.goals.size(); ++i)
        checkGoal(check, goals / i, tree.goals[i]);
    const Path visits = path / "visits";
    check.atMost(visits, tree.visits.size(), limits::kVisits, "visits");
    std::set<std::string> visitIds;
    for (std::size_t i = 0; i < tree.visits.size(); ++i) {
        const Path visit = visits / i;
        check.id(visit / "id", tree.visits[i].id, visitIds);
        checkVisit(check, visit, tree.visits[i]);
    }
}

} // namespace model
