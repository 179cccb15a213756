#include "app/document/document.hpp"
#include "app/document/photo_files.hpp"
#include "app/store/photo_rows.hpp"
#include "model/document/garden_json.hpp"
#include "tests/app/shipped_tables.hpp"
#include "tests/app/small_garden.hpp"
#include "tests/app/store/outside_sqlite.hpp"
#include "tests/app/wait_for.hpp"

#include <gtest/gtest.h>

#include <QDir>
#include <QTemporaryDir>

#include <algorithm>
#include <csignal>
#include <random>
#include <sstream>

#include <sys/wait.h>
#include <unistd.h>

/// A window that edits a garden file as fast as it can is killed at random moments; whatever it
/// reported as saved must be in the file. UNDERBOUGH_KILLS=500 kills it oftener than 40 times.
namespace app {
namespace {

using Random = std::mt19937;

int kills()
{
    const char* wanted = std::getenv("UNDERBOUGH_KILLS");
    return wanted == nullptr ? 40 : std::atoi(wanted);
}

std::size_t digest(const model::Garden& garden)
{
    return std::hash<std::string>()(model::writeGarden(garden));
}

int below(Random& random, int limit)
{
    return std::uniform_int_distribution<int>(0, limit - 1)(random);
}

/// What an editing window tells of itself, in a pipe that outlives it.
class Telling {
public:
    explicit Telling(int pipe) : pipe_(pipe) {}
    void say(const char* what, std::size_t digest) const
    {
        const std::string line = std::string(what) + " " + std::to_string(digest) + "\n";
        if (::write(pipe_, line.data(), line.size()) < 0)
            ::_exit(1);
    }

private:
    int pipe_;
};

void addVisit(model::Garden& garden, Random& random)
{
    auto& visits = garden.trees[0].visits;
    model::Visit visit;
    visit.id = "v" + std::to_string(random());
    visit.date = std::chrono::year(2024) / 7 / 14;
    visit.note = std::string(static_cast<std::size_t>(below(random, 3000)), 'x');
    visits.insert(visits.begin() + below(random, static_cast<int>(visits.size()) + 1), visit);
    if (visits.size() > 20)
        visits.erase(visits.begin() + below(random, 20));
}

void addPhoto(Document& document, model::Garden& garden, Random& random)
{
    const std::string name = "photo " + std::to_string(below(random, 5)) + ".jpg";
    document.addPhoto(name, QByteArray(20'000 + below(random, 20'000), 'p'));
    garden.trees[0].photos = {{name, {}, {}, {}, {}}};
}

void edit(Document& document, Random& random, const Telling& telling)
{
    auto garden = *document.garden();
    switch (below(random, 4)) {
    case 0:
        addVisit(garden, random);
        break;
    case 1:
        addPhoto(document, garden, random);
        break;
    default:
        garden.trees[0].limbs[1].stations[2].position_m.z = 2.0 + below(random, 1'000'000) * 1e-6;
    }
    telling.say("to", digest(garden));
    if (!document.change(QStringLiteral("edit"), garden).isEmpty())
        ::_exit(1);
}

/// Back or forth in the history, which a window may do as well.
void step(Document& document, bool back, const Telling& telling)
{
    auto& history = document.history();
    const int index = back ? history.index() - 1 : history.index();
    const auto& change = static_cast<const Edit*>(history.command(index))->step().change;
    const auto next = applied(*document.garden(), back ? reversed(change) : change);
    telling.say("to", digest(*next.garden));
    back ? history.undo() : history.redo();
}

[[noreturn]] void editForEver(const QString& path, unsigned seed, const Telling& telling)
{
    Random random(seed);
    Document document(tables());
    if (!document.open(path).isEmpty() || !document.savesItself())
        ::_exit(1);
    telling.say("open", 0);
    for (;;) {
        const int choice = below(random, 6);
        if (choice == 0 && document.history().canUndo())
            step(document, true, telling);
        else if (choice == 1 && document.history().canRedo())
            step(document, false, telling);
        else
            edit(document, random, telling);
        if (document.isDirty())
            ::_exit(1);
        telling.say("saved", digest(*document.garden()));
    }
}

/// A window that saves a garden anew over the old file, again and again.
[[noreturn]] void saveForEver(const QString& path, unsigned seed, const Telling& telling)
{
    Random random(seed);
    telling.say("open", 0);
    for (;;) {
        auto garden = smallGarden();
        addVisit(garden, random);
        telling.say("to", digest(garden));
        writeGardenStore(path, garden, {}, {}, {});
        telling.say("saved", digest(garden));
    }
}

/// Digests that a killed window told of last.
struct Told {
    std::size_t saved{};
    std::size_t to{};
    bool ended{}; ///< it stopped by itself, which it should not
};

template <typename Work>
Told killed(Work work, std::size_t before, int after_us)
{
    int pipe[2];
    if (::pipe(pipe) != 0)
        return {0, 0, true};
    const auto child = ::fork();
    if (child == 0)
        work(Telling(pipe[1]));
    ::close(pipe[1]);
    std::string text;
    const auto listen = [&] {
        char piece[4096];
        const ssize_t count = ::read(pipe[0], piece, sizeof piece);
        text.append(piece, static_cast<std::size_t>(std::max<ssize_t>(count, 0)));
        return count > 0;
    };
    while (text.find("open") == std::string::npos && listen())
        ;
    ::usleep(static_cast<useconds_t>(after_us));
    ::kill(child, SIGKILL);
    int status = 0;
    ::waitpid(child, &status, 0);
    while (listen())
        ;
    ::close(pipe[0]);
    Told told{before, before, !WIFSIGNALED(status)};
    std::istringstream lines(text);
    std::string what;
    for (std::size_t number = 0; lines >> what >> number;)
        if (what != "open")
            (what == "saved" ? told.saved : told.to) = number;
    return told;
}

template <typename Work>
void killAgainAndAgain(const QString& path, int times, Work work)
{
    Random random(7);
    (void)tables(); // once here, not in each window
    std::size_t before = digest(loadGarden(path).garden);
    for (int i = 0; i < times; ++i) {
        const auto seed = static_cast<unsigned>(random());
        const auto told = killed([&](const Telling& telling) { work(path, seed, telling); }, before,
                                 patience() * (1000 + below(random, 45'000)));
        ASSERT_FALSE(told.ended) << "kill " << i;
        ASSERT_EQ(outside::integrity(path), "ok") << "kill " << i;
        before = digest(loadGarden(path).garden);
        ASSERT_TRUE(before == told.saved || before == told.to)
            << "kill " << i << ": the file holds neither what was saved nor what came next";
        ASSERT_EQ(StoreLink(path).access(), StoreLink::Access::writable)
            << "a dead window keeps the file";
    }
    const auto lines = checkStore(path);
    EXPECT_TRUE(lines.empty()) << lines.front();
}

TEST(Killed, AWindowLosesNothingThatItReportedAsSaved)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("garden.underbough"));
    writeGardenStore(path, smallGarden(), {}, {}, {});
    killAgainAndAgain(path, kills(), editForEver);
    EXPECT_GT(loadGarden(path).edition.count, kills() / 5)
        << "too little was done to be worth a kill";
}

TEST(Killed, ASavingProgramLeavesTheOldFileOrTheNew)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("garden.underbough"));
    writeGardenStore(path, smallGarden(), {}, {}, {});
    killAgainAndAgain(path, kills() / 4, saveForEver);
}

} // namespace
} // namespace app
