#pragma once

#include "app/assess/newest_wins.hpp"
#include "app/assess/sun_map.hpp"
#include "app/document/edit.hpp"
#include "model/assessment/light_year.hpp"

#include <QObject>

#include <atomic>
#include <chrono>
#include <functional>
#include <memory>
#include <optional>
#include <string>

namespace app {

/// What the window wants to know of a year's light.
struct LightWanted {
    GardenSnapshot garden;
    std::string tree; ///< id of the tree under the hand: the map follows it fastest
    std::chrono::year year{};
    bool map{}; ///< the map is in sight
};

/// The two pieces of work, so that tests can put scripted ones in their place.
struct LightWorks {
    /// In milliseconds while only `tree` changes.
    std::function<SunMap(const LightWanted&)> map;
    /// \returns no surfaces when cancelled
    std::function<model::LightYear(const LightWanted&, const std::atomic<bool>& cancel)> year;
};

/// The model's own. \param tables  outlives the result
[[nodiscard]] LightWorks modelLightWorks(const model::Tables& tables);

/// Reckons a year of light on a thread of its own, beside the assessor's: it takes seconds, and the
/// cuts need not wait for it. The newest wish wins; the map comes at once, the year once nothing
/// new has been wished for `settle`.
class LightAssessor final : public QObject {
    Q_OBJECT

public:
    explicit LightAssessor(LightWorks works,
                           std::chrono::milliseconds settle = std::chrono::milliseconds(400),
                           QObject* parent = nullptr);

    void want(LightWanted wanted);
    /// Gives up the year that is under way; the map comes all the same. The next wish is answered
    /// in full again.
    void stop();
    /// True from a wish until its year is there.
    [[nodiscard]] bool isBusy() const { return worker_.isBusy(); }

signals:
    /// Both arrive in the thread that the assessor lives in.
    void mapReady(const std::shared_ptr<const app::SunMap>& map);
    void yearReady(const app::LightWanted& wanted,
                   const std::shared_ptr<const model::LightYear>& year);
    void failed(const QString& problem);
    void busyChanged();

private:
    void showMap(const LightWanted& wanted, const NewestWins::Turn& turn);
    void reckonYear(const LightWanted& wanted, const NewestWins::Turn& turn);

    LightWorks works_;
    std::optional<LightWanted> wanted_;   ///< last
    std::optional<LightWanted> lastMap_;  ///< of the worker alone
    std::optional<LightWanted> lastYear_; ///< of the worker alone
    NewestWins worker_;
};

} // namespace app
