#include "app/tables/tables.hpp"
#include "app/view/answers_view_model.hpp"
#include "app/view/side_view_model.hpp"
#include "tests/bench/sixty_limbs.hpp"

#include <QCoreApplication>

#include <benchmark/benchmark.h>

#include <algorithm>
#include <ctime>

namespace app {
namespace {

/// A drive along one side of the tree and a path across it: both under the crown.
model::Garden garden()
{
    model::Garden made;
    made.name = "Bench";
    made.place = {47.4, 8.5, 430.0, "Europe/Zurich", {}};
    made.designGust_m_s = 28.0;
    made.trees = {model::load::sixtyLimbs()};
    made.trees[0].id = "tree";
    made.trees[0].species = "Acer rubrum";
    model::Strip drive;
    drive.id = "drive";
    drive.use = model::StripUse::drive;
    drive.outline_m = {{1.5, -12}, {4.5, -12}, {4.5, 12}, {1.5, 12}};
    model::Strip path;
    path.id = "path";
    path.outline_m = {{-12, 1}, {12, 1}, {12, 2.2}, {-12, 2.2}};
    made.strips = {drive, path};
    return made;
}

/// The window's parts that a drag goes through, without a window.
class Bench {
public:
    Bench()
    {
        workspace_.document().start(garden());
        side_.resize(900, 600);
        QObject::connect(&workspace_, &Workspace::quickChanged, [this] { ++answers_; });
        QObject::connect(&workspace_, &Workspace::shadowChanged, [this] { ++shadows_; });
    }
    void grab(const QString& limb)
    {
        side_.chooseLimb(limb);
        const auto& stations = workspace_.limb()->stations;
        tip_ = static_cast<int>(stations.size()) - 1;
        side_.grab(limb, tip_);
        const auto& handles = *side_.handles();
        for (int row = 0; row < handles.rowCount(); ++row) {
            const auto index = handles.index(row);
            if (handles.data(index, HandleModel::Station) == tip_)
                from_ = {handles.data(index, HandleModel::X).toDouble(),
                         handles.data(index, HandleModel::Y).toDouble()};
        }
    }
    /// One move of the hand, until the new loads, headroom and drawing are there.
    void move(int step)
    {
        const int answered = answers_;
        shadowed_ = shadows_;
        side_.dragTo(from_.x() + 12.0 * std::sin(0.3 * step),
                     from_.y() + 8.0 * std::cos(0.3 * step));
        while (answers_ == answered)
            QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
        benchmark::DoNotOptimize(side_.scene());
    }
    /// The shadow comes later; a hand is slower than that.
    void rest()
    {
        while (shadows_ == shadowed_)
            QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
    }

private:
    int argc_ = 0;
    QCoreApplication application_{argc_, nullptr};
    model::Tables tables_ = loadTables();
    Workspace workspace_{tables_, Units(QLocale(QLocale::English), Measures::metric),
                         modelWorks(tables_), std::chrono::year(2025) / 7 / 3};
    SideViewModel side_{workspace_};
    AnswersViewModel answersShown_{workspace_};
    int answers_{};
    int shadows_{};
    int shadowed_{};
    int tip_{};
    QPointF from_;
};

double cpu_ms()
{
    timespec now{};
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
    return 1e3 * static_cast<double>(now.tv_sec) + 1e-6 * static_cast<double>(now.tv_nsec);
}

double quantile(std::vector<double> times, double share)
{
    std::ranges::sort(times);
    return times[static_cast<std::size_t>(share * static_cast<double>(times.size() - 1))];
}

/// From the move of the hand to new loads and headroom on the side view: time by the clock, and of
/// the processor for those who measure on a busy machine.
void dragged(benchmark::State& state, const QString& limb)
{
    Bench bench;
    bench.grab(limb);
    bench.move(0); // what the drag leaves alone is looked at once
    bench.rest();
    std::vector<double> clock;
    std::vector<double> processor;
    int step = 0;
    for (auto _ : state) {
        const auto started = std::chrono::steady_clock::now();
        const double before = cpu_ms();
        bench.move(++step);
        processor.push_back(cpu_ms() - before);
        const std::chrono::duration<double, std::milli> took =
            std::chrono::steady_clock::now() - started;
        clock.push_back(took.count());
        state.PauseTiming();
        bench.rest();
        state.ResumeTiming();
    }
    state.counters["p50 ms"] = quantile(clock, 0.5);
    state.counters["p95 ms"] = quantile(clock, 0.95);
    state.counters["p50 cpu ms"] = quantile(processor, 0.5);
    state.counters["p95 cpu ms"] = quantile(processor, 0.95);
}
BENCHMARK_CAPTURE(dragged, lateral, QStringLiteral("4b"))
    ->Iterations(200)
    ->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(dragged, scaffold, QStringLiteral("4"))
    ->Iterations(200)
    ->Unit(benchmark::kMillisecond);

} // namespace
} // namespace app
