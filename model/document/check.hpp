#pragma once

#include "model/document/fault.hpp"
#include "model/document/limits.hpp"
#include "model/document/path.hpp"
#include "model/garden/garden.hpp"

#include <cmath>
#include <set>
#include <string>
#include <vector>

/// The parts that validate() is put together from.
namespace model {

/// Gathers faults, up to the limit. Every check answers whether all was well.
class Check {
public:
    explicit Check(std::vector<Fault>& faults) : faults_(faults) {}

    bool fault(const Path& path, std::string found, std::string expected);

    /// low <= value <= high; NaN and infinity never are.
    bool within(const Path& path, double value, double low, double high, const char* what);
    /// 0 < value <= high
    bool positive(const Path& path, double value, double high, const char* what);
    /// Of what is drawn of a tree: a base may stand a little into the grass.
    bool drawnHeight(const Path& path, double height_m);
    bool atMost(const Path& path, std::size_t count, std::size_t limit, const char* what);
    /// One line, not over long; `required`: not empty.
    bool name(const Path& path, const std::string& text, bool required);
    bool note(const Path& path, const std::string& text);
    /// A name that nothing in `taken` has; it is taken after.
    bool id(const Path& path, const std::string& text, std::set<std::string>& taken);
    bool place(const Path& path, Point2 place);
    bool outline(const Path& path, const Polygon& outline);
    bool date(const Path& path, std::chrono::year_month_day date);
    /// The leaf_on and leaf_off of the thing at `path`.
    bool leafDates(const Path& path, const LeafDates& dates);

    [[nodiscard]] std::size_t count() const { return count_; }

private:
    std::vector<Fault>& faults_;
    std::size_t count_{0};
};

/// A measure worked out for a message: to the millimetre.
[[nodiscard]] std::string rounded(double value);

/// "1 station", "3 stations"
[[nodiscard]] std::string counted(std::size_t count, std::string_view one);

void checkTree(Check& check, const Path& path, const Tree& tree, std::set<std::string>& ids);
/// One visit, its id apart.
void checkVisit(Check& check, const Path& path, const Visit& visit);
void checkPhoto(Check& check, const Path& path, const Photo& photo);
/// The limbs of one tree, each by itself and as they grow from each other.
void checkLimbs(Check& check, const Path& path, const std::vector<Limb>& limbs);
/// One limb by itself. \returns whether its axis can be reckoned with
bool checkLimb(Check& check, const Path& path, const Limb& limb);

} // namespace model
