#pragma once

#include "model/garden/garden.hpp"

#include <concepts>
#include <type_traits>

/// The form of a garden document, said once: which field of which object holds which member, in
/// the order they are written. A reader and a writer walk it (field_reader.hpp, field_writer.hpp).
///
///   required(name, member)   must be there
///   defaulted(name, member)  may be missing: then the member's own default stands; always written
///   blank(name, member)      an optional: missing when blank
///   list(name, member)       missing when empty
///   extras(member)           every other field of the object, kept as it is
namespace model {

inline constexpr std::string_view kGardenFormat = "underbough-garden";
inline constexpr int kGardenVersion = 1;

template <typename T, typename Plain>
concept Is = std::same_as<std::remove_const_t<T>, Plain>; // the value, or a const one to write

template <typename Visitor>
void fields(Visitor& v, Is<Station> auto& station)
{
    v.required("position_m", station.position_m);
    v.required("diameter_m", station.diameter_m);
    v.extras(station.extras);
}

template <typename Visitor>
void fields(Visitor& v, Is<Defect> auto& defect)
{
    v.required("kind", defect.kind);
    v.required("at_m", defect.at_m);
    v.blank("residual_wall_m", defect.residualWall_m);
    v.blank("thickest_wall_m", defect.thickestWall_m);
    v.blank("opening_deg", defect.opening_deg);
    v.defaulted("note", defect.note);
    v.extras(defect.extras);
}

template <typename Visitor>
void fields(Visitor& v, Is<Foliage> auto& foliage)
{
    v.required("from_m", foliage.from_m);
    v.required("radius_m", foliage.radius_m);
    v.defaulted("hanging_m", foliage.hanging_m);
    v.blank("hem_m", foliage.hem_m);
    v.defaulted("density", foliage.density);
    v.defaulted("thinned", foliage.thinned);
    v.extras(foliage.extras);
}

template <typename Visitor>
void fields(Visitor& v, Is<Prop> auto& prop)
{
    v.required("at_m", prop.at_m);
    v.extras(prop.extras);
}

template <typename Visitor>
void fields(Visitor& v, Is<Limb> auto& limb)
{
    v.required("id", limb.id);
    v.defaulted("name", limb.name);
    v.blank("parent", limb.parent);
    v.defaulted("attached_at_m", limb.attachedAt_m);
    v.required("stations", limb.stations);
    v.defaulted("union", limb.unionKind);
    v.defaulted("measured", limb.measured);
    v.list("defects", limb.defects);
    v.blank("foliage", limb.foliage);
    v.defaulted("fruit_kg", limb.fruit_kg);
    v.list("props", limb.props);
    v.extras(limb.extras);
}

template <typename Visitor>
void fields(Visitor& v, Is<Observation> auto& observation)
{
    v.required("sign", observation.sign);
    v.defaulted("note", observation.note);
    v.extras(observation.extras);
}

template <typename Visitor>
void fields(Visitor& v, Is<Underlay> auto& underlay)
{
    v.required("foot_px", underlay.foot_px);
    v.defaulted("turned_deg", underlay.turned_deg);
    v.defaulted("tilt_deg", underlay.tilt_deg);
    v.defaulted("opacity", underlay.opacity);
    v.extras(underlay.extras);
}

template <typename Visitor>
void fields(Visitor& v, Is<Photo> auto& photo)
{
    v.required("file", photo.file);
    v.blank("metres_per_pixel", photo.metresPerPixel);
    v.blank("view_bearing_deg", photo.viewBearing_deg);
    v.blank("underlay", photo.underlay);
    v.defaulted("note", photo.note);
    v.extras(photo.extras);
}

template <typename Visitor>
void fields(Visitor& v, Is<Goal> auto& goal)
{
    v.required("kind", goal.kind);
    v.defaulted("want", goal.want);
    v.defaulted("subject", goal.subject);
    v.blank("value", goal.value);
    v.list("months", goal.months);
    v.extras(goal.extras);
}

template <typename Visitor>
void fields(Visitor& v, Is<Cut> auto& cut)
{
    v.required("kind", cut.kind);
    v.required("limb", cut.limb);
    v.defaulted("at_m", cut.at_m);
    v.blank("height_m", cut.height_m);
    v.blank("share", cut.share);
    v.extras(cut.extras);
}

template <typename Visitor>
void fields(Visitor& v, Is<HeadroomRecord> auto& record)
{
    v.required("strip", record.strip);
    v.blank("before_m", record.before_m);
    v.blank("after_m", record.after_m);
    v.extras(record.extras);
}

template <typename Visitor>
void fields(Visitor& v, Is<TipRecord> auto& record)
{
    v.required("limb", record.limb);
    v.blank("before_m", record.before_m);
    v.blank("after_m", record.after_m);
    v.extras(record.extras);
}

template <typename Visitor>
void fields(Visitor& v, Is<Wound> auto& wound)
{
    v.required("limb", wound.limb);
    v.defaulted("at_m", wound.at_m);
    v.required("diameter_m", wound.diameter_m);
    v.blank("closed", wound.closed);
    v.extras(wound.extras);
}

template <typename Visitor>
void fields(Visitor& v, Is<VisitWeather> auto& weather)
{
    v.blank("air_degC", weather.air_C);
    v.blank("humidity", weather.humidity);
    v.blank("gust_m_s", weather.gust_m_s);
    v.extras(weather.extras);
}

template <typename Visitor>
void fields(Visitor& v, Is<Visit> auto& visit)
{
    v.required("id", visit.id);
    v.required("date", visit.date);
    v.defaulted("by", visit.by);
    v.list("cuts", visit.cuts);
    v.list("left", visit.left);
    v.blank("leaf_share", visit.leafShare);
    v.list("headroom", visit.headroom);
    v.list("tips", visit.tips);
    v.list("wounds", visit.wounds);
    v.list("limbs_before", visit.limbsBefore);
    v.blank("weather", visit.weather);
    v.list("photos", visit.photos);
    v.defaulted("note", visit.note);
    v.blank("next_due", visit.nextDue);
    v.extras(visit.extras);
}

template <typename Visitor>
void fields(Visitor& v, Is<Tree> auto& tree)
{
    v.required("id", tree.id);
    v.defaulted("name", tree.name);
    v.required("species", tree.species);
    v.required("position_m", tree.position_m);
    v.blank("planted_year", tree.plantedYear);
    v.defaulted("vigour", tree.vigour);
    v.defaulted("protection", tree.protection);
    v.blank("leaf_on", tree.leafDates.on);
    v.blank("leaf_off", tree.leafDates.off);
    v.required("limbs", tree.limbs);
    v.list("observations", tree.observations);
    v.list("photos", tree.photos);
    v.list("goals", tree.goals);
    v.list("visits", tree.visits);
    v.extras(tree.extras);
}

template <typename Visitor>
void fields(Visitor& v, Is<Neighbour> auto& neighbour)
{
    v.required("id", neighbour.id);
    v.defaulted("name", neighbour.name);
    v.required("species", neighbour.species);
    v.required("position_m", neighbour.position_m);
    v.required("height_m", neighbour.height_m);
    v.required("crown_base_m", neighbour.crownBase_m);
    v.required("spread_m", neighbour.spread_m);
    v.blank("across_m", neighbour.across_m);
    v.defaulted("bearing_deg", neighbour.bearing_deg);
    v.blank("stem_diameter_m", neighbour.stemDiameter_m);
    v.defaulted("density", neighbour.density);
    v.blank("leaf_on", neighbour.leafDates.on);
    v.blank("leaf_off", neighbour.leafDates.off);
    v.extras(neighbour.extras);
}

template <typename Visitor>
void fields(Visitor& v, Is<Planting> auto& planting)
{
    v.required("id", planting.id);
    v.defaulted("name", planting.name);
    v.required("kind", planting.kind);
    v.required("plant", planting.plant);
    v.required("outline_m", planting.outline_m);
    v.defaulted("height_m", planting.height_m);
    v.extras(planting.extras);
}

template <typename Visitor>
void fields(Visitor& v, Is<Strip> auto& strip)
{
    v.required("id", strip.id);
    v.defaulted("name", strip.name);
    v.required("use", strip.use);
    v.required("outline_m", strip.outline_m);
    v.blank("headroom_m", strip.headroom_m);
    v.extras(strip.extras);
}

template <typename Visitor>
void fields(Visitor& v, Is<ElectricLine> auto& line)
{
    v.required("id", line.id);
    v.defaulted("name", line.name);
    v.required("path_m", line.path_m);
    v.blank("voltage_kV", line.voltage_kV);
    v.extras(line.extras);
}

template <typename Visitor>
void fields(Visitor& v, Is<Structure> auto& structure)
{
    v.required("id", structure.id);
    v.defaulted("name", structure.name);
    v.required("kind", structure.kind);
    v.required("outline_m", structure.outline_m);
    v.required("height_m", structure.height_m);
    v.extras(structure.extras);
}

template <typename Visitor>
void fields(Visitor& v, Is<Place> auto& place)
{
    v.required("latitude_deg", place.latitude_deg);
    v.required("longitude_deg", place.longitude_deg);
    v.defaulted("altitude_m", place.altitude_m);
    v.defaulted("time_zone", place.timeZone);
    v.list("sunshine_share", place.sunshineShare);
    v.list("storm_months", place.stormMonths);
    v.extras(place.extras);
}

template <typename Visitor>
void fields(Visitor& v, Is<Slope> auto& slope)
{
    v.required("gradient", slope.gradient);
    v.required("falls_to_deg", slope.fallsTo_deg);
    v.extras(slope.extras);
}

template <typename Visitor>
void fields(Visitor& v, Is<Garden> auto& garden)
{
    v.constant("format", kGardenFormat);
    v.version("version", kGardenVersion);
    v.defaulted("name", garden.name);
    v.required("place", garden.place);
    v.defaulted("exposure", garden.exposure);
    v.required("design_gust_m_s", garden.designGust_m_s);
    v.blank("slope", garden.slope);
    v.list("trees", garden.trees);
    v.list("neighbours", garden.neighbours);
    v.list("plantings", garden.plantings);
    v.list("strips", garden.strips);
    v.list("electric_lines", garden.lines);
    v.list("structures", garden.structures);
    v.extras(garden.extras);
}

} // namespace model
