#include "app/assess/kept_memory.hpp"
#include "app/drawing/plan_painter.hpp"
#include "app/drawing/side_painter.hpp"
#include "app/paper/paper_palette.hpp"
#include "app/tables/tables.hpp"
#include "app/window/pages.hpp"
#include "tests/bench/sixty_limbs.hpp"

#include <QGuiApplication>
#include <QImage>
#include <QPainter>

#include <benchmark/benchmark.h>

#include <algorithm>
#include <array>
#include <chrono>
#include <ctime>
#include <string>

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
    /// \param mapShown  the sun's map in place of the hour's shadow
    explicit Bench(bool mapShown = false)
    {
        pages_.workspace.document().start(garden());
        pages_.side.resize(900, 600);
        pages_.plan.resize(420, 320);
        QObject::connect(&pages_.workspace, &Workspace::quickChanged, [this] { ++answers_; });
        QObject::connect(&pages_.workspace, &Workspace::shadowChanged, [this] { ++shadows_; });
        QObject::connect(&pages_.light, &LightViewModel::mapRenewed, [this] { ++maps_; });
        pages_.light.setMapShown(mapShown);
    }
    void grab(const QString& limb)
    {
        auto& side = pages_.side;
        side.chooseLimb(limb);
        const auto& stations = pages_.workspace.limb()->stations;
        tip_ = static_cast<int>(stations.size()) - 1;
        side.grab(limb, tip_);
        const auto& handles = *side.handles();
        for (int row = 0; row < handles.rowCount(); ++row) {
            const auto index = handles.index(row);
            if (handles.data(index, HandleModel::LimbId) == limb &&
                handles.data(index, HandleModel::Station) == tip_)
                from_ = {handles.data(index, HandleModel::X).toDouble(),
                         handles.data(index, HandleModel::Y).toDouble()};
        }
    }
    /// One move of the hand.
    void move()
    {
        awaited_ = {answers_ + 1, shadows_ + 1, maps_ + 1};
        ++step_;
        pages_.side.dragTo(from_.x() + 12.0 * std::sin(0.3 * step_),
                           from_.y() + 8.0 * std::cos(0.3 * step_));
    }
    void untilAnswered() { until(answers_, awaited_.answers); }
    void untilShaded() { until(shadows_, awaited_.shadows); }
    void untilMapped() { until(maps_, awaited_.maps); }

    void drawSide() { benchmark::DoNotOptimize(pages_.side.scene()); }
    void drawPlan() { benchmark::DoNotOptimize(pages_.plan.scene()); }
    void paintSide() { app::paintSide(painter(), pages_.side.scene(), paperPalette(), &pictures_); }
    void paintPlan() { app::paintPlan(painter(), pages_.plan.scene(), paperPalette()); }

private:
    struct Counts {
        int answers{};
        int shadows{};
        int maps{};
    };
    static void until(const int& count, int awaited)
    {
        while (count < awaited)
            QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
    }
    QPainter& painter()
    {
        if (!painter_.isActive())
            painter_.begin(&canvas_);
        return painter_;
    }

    int argc_ = 1;
    std::array<char, 6> name_{"bench"};
    std::array<char*, 2> argv_{name_.data(), nullptr};
    QGuiApplication application_{argc_, argv_.data()};
    model::Tables tables_ = loadTables();
    Pages pages_{tables_,
                 Units(QLocale(QLocale::English), Measures::metric),
                 modelWorks(tables_),
                 std::chrono::year(2025) / 7 / 3,
                 {}};
    QImage canvas_{900, 600, QImage::Format_ARGB32_Premultiplied};
    QPainter painter_;
    SidePictures pictures_;
    int answers_{};
    int shadows_{};
    int maps_{};
    Counts awaited_;
    int step_{};
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

/// Times by the clock, and of the processor for those who measure on a busy machine.
class Stopwatch {
public:
    template <typename Work>
    void time(Work work)
    {
        const auto started = std::chrono::steady_clock::now();
        const double before = cpu_ms();
        work();
        processor_.push_back(cpu_ms() - before);
        const std::chrono::duration<double, std::milli> took =
            std::chrono::steady_clock::now() - started;
        clock_.push_back(took.count());
    }
    void tell(benchmark::State& state, const std::string& what) const
    {
        state.counters[what + " p50 ms"] = quantile(clock_, 0.5);
        state.counters[what + " p95 ms"] = quantile(clock_, 0.95);
        state.counters[what + " p95 cpu ms"] = quantile(processor_, 0.95);
    }

private:
    std::vector<double> clock_;
    std::vector<double> processor_;
};

/// From the move of the hand to new loads and headroom in the answers and on the side view.
void dragged(benchmark::State& state, const QString& limb)
{
    Bench bench;
    bench.grab(limb);
    bench.move(); // what the drag leaves alone is looked at once
    bench.untilShaded();
    Stopwatch answer;
    for (auto _ : state) {
        answer.time([&] {
            bench.move();
            bench.untilAnswered();
            bench.drawSide();
        });
        state.PauseTiming();
        bench.untilShaded(); // a hand is slower than that
        state.ResumeTiming();
    }
    answer.tell(state, "answer");
}
BENCHMARK_CAPTURE(dragged, lateral, QStringLiteral("4b"))
    ->Iterations(200)
    ->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(dragged, scaffold, QStringLiteral("4"))
    ->Iterations(200)
    ->Unit(benchmark::kMillisecond);

/// The same to the shadow of the hour on the plan, which follows on a thread of its own.
void shaded(benchmark::State& state, const QString& limb)
{
    Bench bench;
    bench.grab(limb);
    bench.move();
    bench.untilShaded();
    Stopwatch shadow;
    for (auto _ : state) {
        shadow.time([&] {
            bench.move();
            bench.untilShaded();
            bench.drawPlan();
        });
        state.PauseTiming();
        bench.untilAnswered();
        state.ResumeTiming();
    }
    shadow.tell(state, "shadow");
}
BENCHMARK_CAPTURE(shaded, lateral, QStringLiteral("4b"))
    ->Iterations(100)
    ->Unit(benchmark::kMillisecond);

/// The same to the season's light map on the plan, while it is shown.
void mapped(benchmark::State& state, const QString& limb)
{
    Bench bench(true);
    bench.grab(limb);
    bench.move();
    bench.untilMapped();
    Stopwatch map;
    for (auto _ : state) {
        map.time([&] {
            bench.move();
            bench.untilMapped();
            bench.drawPlan();
        });
        state.PauseTiming();
        bench.untilAnswered();
        state.ResumeTiming();
    }
    map.tell(state, "map");
}
BENCHMARK_CAPTURE(mapped, lateral, QStringLiteral("4b"))
    ->Iterations(100)
    ->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(mapped, scaffold, QStringLiteral("4"))
    ->Iterations(100)
    ->Unit(benchmark::kMillisecond);

/// What the pictures cost, which the window makes anew once for each frame.
void painted(benchmark::State& state)
{
    Bench bench;
    bench.grab(QStringLiteral("4b"));
    bench.move();
    bench.untilShaded();
    Stopwatch side;
    Stopwatch plan;
    for (auto _ : state) {
        bench.move();
        bench.untilAnswered();
        bench.untilShaded();
        side.time([&] { bench.paintSide(); });
        plan.time([&] { bench.paintPlan(); });
    }
    side.tell(state, "side");
    plan.tell(state, "plan");
}
BENCHMARK(painted)->Iterations(50)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace app

int main(int argc, char** argv)
{
    app::keepFreedMemory(); // as the program does
    qputenv("QT_QPA_PLATFORM", "offscreen");
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    benchmark::Shutdown();
}
