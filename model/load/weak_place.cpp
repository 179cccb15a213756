#include "model/load/weak_place.hpp"

#include "model/constants.hpp"
#include "model/load/wide.hpp"

#include <algorithm>
#include <cmath>

namespace model::load {
namespace {

/// Moments that differ by less than this share belong to one place.
constexpr double kAlike = 0.02;

/// A place under one draw: everything but the strength of the wind is settled. Stresses are over
/// the strength.
struct Settled {
    double still2{}; ///< bending by weight, squared
    double across{}; ///< product of the bending by weight and by wind
    double wind2{};  ///< bending by the reference wind, squared
    double stillTwist{};
    double windTwist{};
    double stillAxial{};
    double windAxial{};

    [[nodiscard]] UNDERBOUGH_INLINE double use(double k) const
    {
        const double bend = std::sqrt(std::max(0.0, still2 + k * (2.0 * across + k * wind2)));
        const double shear = stillTwist + k * windTwist;
        const double along = 0.5 * (bend + std::abs(stillAxial + k * windAxial));
        return along + std::sqrt(along * along + shear * shear); // (L10)
    }

    /// The wind at which bending alone would use all the strength: the larger root of a quadratic.
    [[nodiscard]] UNDERBOUGH_INLINE double bearableByBending() const
    {
        const double left = across * across - wind2 * (still2 - 1.0);
        return (std::sqrt(std::max(0.0, left)) - across) / wind2;
    }
};

bool nearlySame(Vec3 a, Vec3 b)
{
    return norm(a - b) <= kAlike * norm(a);
}

} // namespace

void Draws::add(const Draw& draw)
{
    strength.push_back(draw.strength);
    diameter.push_back(draw.diameter);
    leaf.push_back(draw.leaf);
    drag.push_back(draw.drag);
    wind.push_back(draw.wind);
}

WeakPlace::Part WeakPlace::part(Vec3 moment_Nm, double axial_N, Vec3 direction)
{
    const double torsion = dot(moment_Nm, direction);
    return {moment_Nm - torsion * direction, torsion, axial_N};
}

WeakPlace::WeakPlace(const LoadCase& load, std::size_t limb, const Governing& worst,
                     double windScale, const std::vector<Weights>& ofLimbs)
{
    const auto& piece = load.limbs[limb].pieces[worst.piece];
    const Vec3 t = piece.direction;
    const Vec3 at = piece.from_m + worst.along_m * t;
    const auto weights = weightsBeyond(load, limb, worst.piece, worst.along_m, ofLimbs);
    const auto asked = askedAt(piece, worst.along_m, worst.beyond, worst.wind);
    const Vec3 towards = (worst.wind.opposite ? -1.0 : 1.0) * blowsTowards(worst.wind.bearing);
    const double share = worst.along_m / piece.length_m;
    const bool within = worst.along_m > 0.0;
    section_ = within ? solidSection(piece.thick_m + share * (piece.thin_m - piece.thick_m))
                      : piece.section;
    strength_Pa_ = load.greenMor_Pa * (within ? piece.factorWithin : piece.factorAtStart);
    const auto hung = [&](const Weight& weight) {
        return part(momentAbout(weight, at), -kGravity_m_s2 * weight.mass_kg * t.z, t);
    };
    wood_ = hung(weights.wood);
    leafy_ = hung(weights.leafy);
    Weight guests = weights.fruit;
    add(guests, weights.weather);
    add(guests, weights.props); // they bear nothing but guests (L30)
    guest_ = hung(guests);
    guestMass_kg_ = weights.fruit.mass_kg + weights.weather.mass_kg;
    cropShare_ = guestMass_kg_ > 0.0 ? weights.fruit.mass_kg / guestMass_kg_ : 0.0;
    standing_ = load.standing[limb];
    wind_ = part((1.0 / windScale) * asked.windMoment_Nm,
                 worst.beyond.share / windScale * worst.beyond.drag.force_N * dot(towards, t), t);
    multiply();
}

void WeakPlace::multiply()
{
    const Vec3 a = wood_.bending_Nm;
    const Vec3 b = leafy_.bending_Nm;
    const Vec3 c = guest_.bending_Nm;
    const Vec3 w = wind_.bending_Nm;
    products_ = {dot(a, a), dot(a, b), dot(a, c), dot(b, b), dot(b, c),
                 dot(c, c), dot(w, a), dot(w, b), dot(w, c), dot(w, w)};
}

WeakPlace WeakPlace::withoutGuests() const
{
    WeakPlace bare = *this;
    bare.guest_ = {};
    bare.guestMass_kg_ = 0.0;
    bare.standing_ = 1.0;
    bare.multiply();
    return bare;
}

WeakPlace WeakPlace::withPastCrop() const
{
    constexpr double kBorneBefore = 0.5;
    const double share = kBorneBefore * cropShare_;
    WeakPlace past = *this;
    past.guest_ = {share * guest_.bending_Nm, share * guest_.torsion_Nm, share * guest_.axial_N};
    past.multiply();
    return past;
}

bool WeakPlace::isLike(const WeakPlace& other) const
{
    return strength_Pa_ == other.strength_Pa_ &&
           nearlySame(wind_.bending_Nm, other.wind_.bending_Nm) &&
           nearlySame(wood_.bending_Nm, other.wood_.bending_Nm) &&
           std::abs(section_.bending_m3 - other.section_.bending_m3) <=
               kAlike * section_.bending_m3;
}

/// Straight through without a branch, so that the compiler can reckon several draws at a time.
UNDERBOUGH_INLINE double WeakPlace::bearable(double strength, double diameter, double leaf) const
{
    const double thicker2 = diameter * diameter;
    const double l = leaf;
    const double perArea = 1.0 / (thicker2 * section_.area_m2 * strength * strength_Pa_);
    const double perBending = perArea * section_.area_m2 / (diameter * section_.bending_m3);
    const double perTorsion = perBending * section_.bending_m3 / section_.torsion_m3;
    const double square = perBending * perBending;
    const auto& p = products_;
    Settled settled;
    settled.still2 =
        square * (thicker2 * (thicker2 * p.woodWood + 2.0 * (l * p.woodLeafy + p.woodGuest)) +
                  l * (l * p.leafyLeafy + 2.0 * p.leafyGuest) + p.guestGuest);
    settled.across = square * (thicker2 * p.windWood + l * p.windLeafy + p.windGuest);
    settled.wind2 = square * p.windWind;
    settled.stillTwist =
        perTorsion * (thicker2 * wood_.torsion_Nm + l * leafy_.torsion_Nm + guest_.torsion_Nm);
    settled.windTwist = perTorsion * wind_.torsion_Nm;
    settled.stillAxial = perArea * (thicker2 * wood_.axial_N + l * leafy_.axial_N + guest_.axial_N);
    settled.windAxial = perArea * wind_.axial_N;
    // Torsion and axial force take a little off: two steps by the chord from a point below.
    double high = settled.bearableByBending();
    double over = settled.use(high) - 1.0;
    double low = high / (1.0 + over);
    for (int step = 0; step < 2; ++step) {
        const double under = settled.use(low) - 1.0;
        const double next = std::max(0.0, low - under * (high - low) / (over - under));
        const bool found = std::abs(over - under) < 1e-9;
        high = found ? high : low;
        low = found ? low : next;
        over = found ? over : under;
    }
    const double byWind = settled.use(0.0) >= standing_ ? 0.0 : low;
    return settled.wind2 > 0.0 ? byWind : HUGE_VAL;
}

double WeakPlace::bearableWind(const Draw& draw) const
{
    return bearable(draw.strength, draw.diameter, draw.leaf);
}

UNDERBOUGH_WIDE void WeakPlace::lowerToBearable(const Draws& draws,
                                                std::vector<double>& least) const
{
    const WeakPlace here = *this; // a copy that nothing else can write to
    const std::size_t count = draws.size();
    const double* const strength = draws.strength.data();
    const double* const diameter = draws.diameter.data();
    const double* const leaf = draws.leaf.data();
    double* const lowest = least.data();
    for (std::size_t i = 0; i < count; ++i) {
        const double times = here.bearable(strength[i], diameter[i], leaf[i]);
        lowest[i] = times < lowest[i] ? times : lowest[i];
    }
}

} // namespace model::load
