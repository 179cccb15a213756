#include "app/assess/light_assessor.hpp"

#include <utility>

namespace app {
namespace {

bool same(const std::optional<LightWanted>& last, const LightWanted& wanted)
{
    return last && last->garden == wanted.garden && last->year == wanted.year;
}

} // namespace

LightAssessor::LightAssessor(LightWorks works, std::chrono::milliseconds settle, QObject* parent)
    : QObject(parent), works_(std::move(works)), worker_(settle)
{
    connect(&worker_, &NewestWins::busyChanged, this, &LightAssessor::busyChanged);
    connect(&worker_, &NewestWins::failed, this, &LightAssessor::failed);
}

void LightAssessor::want(LightWanted wanted)
{
    wanted_ = wanted;
    worker_.start([this, wanted = std::move(wanted)](const NewestWins::Turn& turn) {
        showMap(wanted, turn);
        reckonYear(wanted, turn);
    });
}

void LightAssessor::stop()
{
    if (wanted_ && worker_.isBusy())
        worker_.start(
            [this, wanted = *wanted_](const NewestWins::Turn& turn) { showMap(wanted, turn); });
}

void LightAssessor::showMap(const LightWanted& wanted, const NewestWins::Turn& turn)
{
    if (!wanted.map || same(lastMap_, wanted))
        return;
    const auto map = std::make_shared<const SunMap>(works_.map(wanted));
    lastMap_ = wanted;
    turn.tell([this, map] { emit mapReady(map); });
}

void LightAssessor::reckonYear(const LightWanted& wanted, const NewestWins::Turn& turn)
{
    if (same(lastYear_, wanted) || !turn.settles())
        return;
    const auto year = std::make_shared<const model::LightYear>(works_.year(wanted, turn.cancel()));
    if (turn.cancel())
        return;
    lastYear_ = wanted;
    turn.tell([this, wanted, year] { emit yearReady(wanted, year); });
}

} // namespace app
