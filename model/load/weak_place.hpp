#pragma once

#include "model/load/governing.hpp"

#include <vector>

namespace model::load {

/// What one draw of the unknowns makes of a limb, as factors on the figures reckoned with.
struct Draw {
    double strength{1.0};
    double diameter{1.0};
    double leaf{1.0}; ///< weight of leaf and twigs
    double drag{1.0}; ///< wind force on the same outline
    double wind{1.0}; ///< gust speed at the tree
};

/// Many draws, one list for each factor, so that several are reckoned at a time.
struct Draws {
    std::vector<double> strength;
    std::vector<double> diameter;
    std::vector<double> leaf;
    std::vector<double> drag;
    std::vector<double> wind;
    void add(const Draw& draw);
    [[nodiscard]] std::size_t size() const { return strength.size(); }
};

/// A place along a limb where it may break in wind from one direction. Moments are split in
/// bending and torsion once, so that a draw only scales and adds numbers.
class WeakPlace {
public:
    /// The place that governs in a wind `windScale` times as strong as that of `load`.
    /// \param ofLimbs  from weightsByKind
    WeakPlace(const LoadCase& load, std::size_t limb, const Governing& worst, double windScale,
              const std::vector<Weights>& ofLimbs);

    /// How many times the wind force of `load` the place bears before its principal stress reaches
    /// its strength; 0 if weight alone breaks it, infinite where no wind takes hold (L22).
    [[nodiscard]] double bearableWind(const Draw& draw) const;

    /// The same for many draws, where it is less than what `least` holds.
    void lowerToBearable(const Draws& draws, std::vector<double>& least) const;

    /// True if crop, rain or ice hang beyond the place: what is not there every day.
    [[nodiscard]] bool carriesGuests() const { return guestMass_kg_ > 0.0; }
    [[nodiscard]] WeakPlace withoutGuests() const;
    /// With the share of its crop that it is taken to have borne before (L23), and no rain or ice.
    [[nodiscard]] WeakPlace withPastCrop() const;

    /// True if the two are the same place in the same wind, or so near that it is all one.
    [[nodiscard]] bool isLike(const WeakPlace& other) const;

private:
    struct Part {
        Vec3 bending_Nm{};
        double torsion_Nm{};
        double axial_N{};
    };
    [[nodiscard]] static Part part(Vec3 moment_Nm, double axial_N, Vec3 direction);
    void multiply();
    [[nodiscard]] double bearable(double strength, double diameter, double leaf) const;

    Section section_{};
    double strength_Pa_{};
    Part wood_{};
    Part leafy_{};
    Part guest_{}; ///< crop, rain and ice
    double guestMass_kg_{};
    double cropShare_{};   ///< of the guests' mass
    double standing_{1.0}; ///< strength under weight alone, for as long as they stay (L27)
    Part wind_{};
    struct Products {
        double woodWood{}, woodLeafy{}, woodGuest{}, leafyLeafy{}, leafyGuest{}, guestGuest{};
        double windWood{}, windLeafy{}, windGuest{}, windWind{};
    } products_{}; ///< of the bending moments
};

} // namespace model::load
