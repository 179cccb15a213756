// The garden file: 20 years of 30 trees with 4 visits a year, and 500 photos of 400 kB. Aims: open
// within 1 s, an edit on the disk within 10 ms, as a median. Times are those of the disk that the
// temporary folder lies on.
#include "app/document/document.hpp"
#include "app/tables/tables.hpp"

#include <benchmark/benchmark.h>

#include <QTemporaryDir>

#include <random>

namespace {

using namespace app;

constexpr int kTrees = 30;
constexpr int kVisits = 20 * 4;
constexpr int kPhotos = 500;
constexpr int kPhotoBytes = 400'000;
constexpr int kLimbs = 25;

model::Limb limb(int number)
{
    model::Limb limb;
    limb.id = "limb " + std::to_string(number);
    limb.parent = "trunk";
    limb.attachedAt_m = 1.5 + 0.1 * number;
    const double z = limb.attachedAt_m;
    const double side = number % 2 == 0 ? 1.0 : -1.0;
    limb.stations = {
        {{0, 0, z}, 0.08}, {{side, 0.1, z + 0.4}, 0.05}, {{2 * side, 0.2, z + 0.7}, 0.02}};
    limb.foliage.emplace();
    limb.foliage->from_m = 0.5;
    limb.foliage->radius_m = 0.6;
    return limb;
}

model::Visit visit(int number)
{
    model::Visit visit;
    visit.id = "visit " + std::to_string(number);
    visit.date = std::chrono::year(2005 + number / 4) / (1 + 3 * (number % 4)) / 12;
    visit.by = "Ada";
    for (int i = 0; i < 4; ++i)
        visit.cuts.push_back({model::CutKind::removal,
                              "limb " + std::to_string((number + i) % kLimbs),
                              0.0,
                              {},
                              {},
                              {}});
    visit.leafShare = 0.08;
    visit.note = "Took the crossing shoots on the path side, left the low bough for another year.";
    return visit;
}

model::Tree tree(int number)
{
    model::Tree tree;
    tree.id = "tree " + std::to_string(number);
    tree.species = "Malus domestica";
    tree.position_m = {8.0 * (number % 6), 8.0 * (number / 6)};
    model::Limb trunk;
    trunk.id = "trunk";
    trunk.stations = {{{0, 0, 0}, 0.22}, {{0, 0, 2}, 0.18}, {{0, 0, 5}, 0.06}};
    tree.limbs.push_back(trunk);
    for (int i = 0; i < kLimbs; ++i)
        tree.limbs.push_back(limb(i));
    for (int i = 0; i < kVisits; ++i)
        tree.visits.push_back(visit(i));
    for (int i = number; i < kPhotos; i += kTrees)
        tree.photos.push_back({"photo " + std::to_string(i) + ".jpg", {}, {}, {}, {}});
    return tree;
}

const model::Tables& tables()
{
    static const model::Tables kTables = loadTables();
    return kTables;
}

QByteArray photo()
{
    static std::mt19937 random(5);
    QByteArray bytes(kPhotoBytes, '\0');
    for (auto& byte : bytes)
        byte = static_cast<char>(random());
    return bytes;
}

/// The garden's file, made once.
const QString& file()
{
    static const QTemporaryDir folder;
    static const QString path = [] {
        model::Garden garden;
        garden.designGust_m_s = 25.0;
        for (int i = 0; i < kTrees; ++i)
            garden.trees.push_back(tree(i));
        std::vector<std::string> names;
        for (int i = 0; i < kPhotos; ++i)
            names.push_back("photo " + std::to_string(i) + ".jpg");
        const QString made = folder.filePath(QStringLiteral("garden.underbough"));
        writeGardenStore(made, garden, {}, names, [](const auto&) { return photo(); });
        return made;
    }();
    return path;
}

void open(benchmark::State& state)
{
    file();
    for (auto _ : state) {
        Document document(tables());
        if (const auto problem = document.open(file()); !problem.isEmpty())
            state.SkipWithError(problem.toUtf8().constData());
    }
}
BENCHMARK(open)
    ->Unit(benchmark::kMillisecond)
    ->Iterations(1)
    ->Repetitions(15)
    ->ReportAggregatesOnly();

/// One document for all edits, as a window has it.
Document& document()
{
    static Document open(tables());
    if (open.path().isEmpty())
        (void)open.open(file());
    return open;
}

template <typename Change>
void edit(benchmark::State& state, Change change)
{
    static int number = 0;
    auto& open = document();
    for (auto _ : state) {
        auto garden = *open.garden();
        change(open, garden, ++number);
        (void)open.change(QStringLiteral("edit"), std::move(garden));
        if (open.isDirty())
            state.SkipWithError(open.fileProblem().toUtf8().constData());
    }
}

void moveALimb(benchmark::State& state)
{
    edit(state, [](Document&, model::Garden& garden, int number) {
        garden.trees[12].limbs[7].stations[2].position_m.z += 1e-4 * number;
    });
}

void writeAVisit(benchmark::State& state)
{
    edit(state, [](Document&, model::Garden& garden, int number) {
        garden.trees[12].visits.push_back(visit(kVisits));
        garden.trees[12].visits.back().id = "new " + std::to_string(number);
    });
}

void addAPhoto(benchmark::State& state)
{
    edit(state, [](Document& open, model::Garden& garden, int number) {
        const std::string name = "new " + std::to_string(number) + ".jpg";
        open.addPhoto(name, photo());
        garden.trees[12].photos.push_back({name, {}, {}, {}, {}});
    });
}

void undoAndRedo(benchmark::State& state)
{
    auto& open = document();
    for (auto _ : state)
        open.history().canUndo() ? open.history().undo() : open.history().redo();
}

#define UNDERBOUGH_EDIT(name)                                                                      \
    BENCHMARK(name)                                                                                \
        ->Unit(benchmark::kMillisecond)                                                            \
        ->Iterations(1)                                                                            \
        ->Repetitions(60)                                                                          \
        ->ReportAggregatesOnly()
UNDERBOUGH_EDIT(moveALimb);
UNDERBOUGH_EDIT(writeAVisit);
UNDERBOUGH_EDIT(addAPhoto);
UNDERBOUGH_EDIT(undoAndRedo);

} // namespace
