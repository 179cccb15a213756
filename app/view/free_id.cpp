#include "app/view/free_id.hpp"

#include <algorithm>

namespace app {
namespace {

bool isTaken(const model::Garden& garden, const std::string& id)
{
    const auto among = [&id](const auto& things) {
        return std::ranges::any_of(things, [&id](const auto& thing) { return thing.id == id; });
    };
    return among(garden.trees) || among(garden.neighbours) || among(garden.plantings) ||
           among(garden.strips) || among(garden.lines) || among(garden.structures);
}

} // namespace

std::string freeId(const model::Garden& garden, const std::string& word)
{
    for (int number = 1;; ++number) {
        auto id = word + '-' + std::to_string(number);
        if (!isTaken(garden, id))
            return id;
    }
}

} // namespace app
