#include "model/light/nested_boxes.hpp"

#include <algorithm>

namespace model::light {
namespace {

/// Wider than float may round a place that is 1 km away.
constexpr double kSlack_m = 1e-4;

EightBoxes eightBoxes(std::span<const Box> boxes)
{
    EightBoxes eight;
    eight.halfX = eight.halfY = eight.halfZ = allLanes(kNothing);
    for (std::size_t i = 0; i < boxes.size(); ++i) {
        const Vec3 middle = 0.5 * (boxes[i].low + boxes[i].high);
        const Vec3 half = 0.5 * (boxes[i].high - boxes[i].low);
        const auto put = [i](double value, Lanes& to) { to[i] = static_cast<float>(value); };
        put(middle.x, eight.x);
        put(middle.y, eight.y);
        put(middle.z, eight.z);
        put(half.x + kSlack_m, eight.halfX);
        put(half.y + kSlack_m, eight.halfY);
        put(half.z + kSlack_m, eight.halfZ);
    }
    return eight;
}

Box around(std::span<const Box> boxes)
{
    Box whole = boxes.front();
    for (const auto& box : boxes.subspan(1)) {
        whole.low = {std::min(whole.low.x, box.low.x), std::min(whole.low.y, box.low.y),
                     std::min(whole.low.z, box.low.z)};
        whole.high = {std::max(whole.high.x, box.high.x), std::max(whole.high.y, box.high.y),
                      std::max(whole.high.z, box.high.z)};
    }
    return whole;
}

} // namespace

NestedBoxes::NestedBoxes(std::span<const Box> boxes)
{
    std::vector<Box> level(boxes.begin(), boxes.end());
    while (!level.empty()) {
        auto& added = levels_.emplace_back();
        std::vector<Box> above;
        for (std::size_t first = 0; first < level.size(); first += kLanes) {
            const auto eight =
                std::span(level).subspan(first, std::min(kLanes, level.size() - first));
            added.boxes.push_back(eightBoxes(eight));
            above.push_back(around(eight));
        }
        added.windows.resize(added.boxes.size());
        level = above.size() > 1 ? std::move(above) : std::vector<Box>{};
    }
    met_.resize(kLanes * (boxes.size() + kLanes));
    above_.resize(met_.size());
}

void NestedBoxes::aim(const LaneWork& work, const BeamAxes& axes)
{
    for (auto& level : levels_)
        for (std::size_t i = 0; i < level.boxes.size(); ++i)
            work.aimBoxes(level.boxes[i], axes, level.windows[i]);
}

std::span<const std::uint32_t> NestedBoxes::met(const LaneWork& work, const Window& window)
{
    if (levels_.empty())
        return {};
    std::size_t count = 1;
    met_.front() = 0;
    for (auto level = levels_.rbegin(); level != levels_.rend(); ++level) {
        std::swap(met_, above_);
        count = work.metInside(level->windows.data(), {above_.data(), count}, window, met_.data());
    }
    return {met_.data(), count};
}

Window NestedBoxes::whole(const LaneWork& work) const
{
    return levels_.empty() ? Window{kMissed, -kMissed, kMissed, -kMissed}
                           : work.around(levels_.back().windows.front());
}

} // namespace model::light
