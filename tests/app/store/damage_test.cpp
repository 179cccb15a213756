#include "app/store/recover_garden.hpp"

#include "app/document/file_sentences.hpp"
#include "app/store/photo_rows.hpp"
#include "tests/app/small_garden.hpp"
#include "tests/app/store/outside_sqlite.hpp"

#include <gtest/gtest.h>

#include <QFile>
#include <QTemporaryDir>

#include <algorithm>
#include <random>

/// Two hundred garden files that something went wrong with. Each opens as what was written or is
/// refused in one line; never a crash, never a garden that is quietly another; and what can be read
/// of it comes into a new file.
namespace app {
namespace {

using Random = std::mt19937;

constexpr int kOfEachKind = 40;
constexpr qsizetype kPage = 4096;

qsizetype below(Random& random, qsizetype limit)
{
    return std::uniform_int_distribution<qsizetype>(0, limit - 1)(random);
}

model::Garden wholeGarden()
{
    auto garden = smallGarden();
    const auto tree = garden.trees[0];
    garden.trees.clear();
    for (const char* id : {"ash", "beech", "cherry"}) {
        auto other = tree;
        other.id = id;
        other.position_m.x += 10.0 * static_cast<double>(garden.trees.size());
        for (int i = 0; i < 30; ++i) {
            model::Visit visit;
            visit.id = "visit " + std::to_string(i);
            visit.date = std::chrono::year(1995 + i) / 7 / 14;
            visit.note = std::string(static_cast<std::size_t>(10 * i), 'n');
            other.visits.push_back(visit);
        }
        garden.trees.push_back(other);
    }
    garden.trees[0].photos = {{"ash.jpg", {}, {}, {}, {}}};
    return garden;
}

StepHistory historyOf(const model::Garden& garden)
{
    StepHistory history;
    auto before = garden;
    before.trees[1].visits.pop_back();
    history.steps.push_back({1, "visit", 0, difference(before, garden)});
    history.done = 1;
    return history;
}

using Harm = void (*)(QByteArray&, Random&);

void flipBits(QByteArray& bytes, Random& random)
{
    for (auto count = 1 + below(random, 8); count > 0; --count) {
        const auto at = below(random, bytes.size());
        bytes[at] = static_cast<char>(bytes[at] ^ (1 << below(random, 8)));
    }
}

void cutShort(QByteArray& bytes, Random& random)
{
    bytes.truncate(1 + below(random, bytes.size() - 1));
}

void swapPages(QByteArray& bytes, Random& random)
{
    const auto pages = bytes.size() / kPage;
    const auto a = below(random, pages) * kPage;
    const auto b = below(random, pages) * kPage;
    std::swap_ranges(bytes.begin() + a, bytes.begin() + a + kPage, bytes.begin() + b);
}

void losePage(QByteArray& bytes, Random& random)
{
    const auto at = below(random, bytes.size() / kPage) * kPage;
    std::fill_n(bytes.begin() + at, kPage, '\0');
}

void scribble(QByteArray& bytes, Random& random)
{
    const auto from = below(random, bytes.size());
    const auto to = std::min(bytes.size(), from + 1 + below(random, 2 * kPage));
    for (auto at = from; at < to; ++at)
        bytes[at] = static_cast<char>(below(random, 256));
}

struct Kind {
    const char* name;
    Harm harm;
};

class Damaged : public ::testing::TestWithParam<Kind> {
protected:
    Damaged() : garden_(wholeGarden()), history_(historyOf(garden_))
    {
        writeGardenStore(file_, garden_, history_, {"ash.jpg"},
                         [](const std::string&) { return QByteArray(50'000, 'p'); });
        whole_ = outside::bytes(file_);
        parts_ = partsOf(garden_);
    }

    /// Whether it could be read; if so, it is what was written.
    bool opens()
    {
        try {
            const auto stored = loadGarden(file_);
            EXPECT_TRUE(stored.garden == garden_) << "quietly another garden";
            EXPECT_TRUE(stored.history == history_) << "quietly another history";
            return true;
        } catch (const StoreError& error) {
            const std::string line = error.what();
            EXPECT_FALSE(line.empty());
            EXPECT_EQ(line.find('\n'), std::string::npos) << line;
            return false;
        }
    }

    /// How many of the garden's parts a recovery brings back; all but the doubtful are right.
    std::size_t recovered()
    {
        try {
            const auto recovery = recoverGarden(file_, saved_);
            EXPECT_TRUE(checkStore(saved_).empty());
            std::size_t right = 0;
            std::size_t wrong = 0;
            for (const auto& [key, part] : partsOf(loadGarden(saved_).garden)) {
                const auto was = parts_.find(key);
                const bool same = was != parts_.end() && was->second.document == part.document;
                ++(same ? right : wrong);
            }
            EXPECT_LE(wrong, recovery.doubtful + recovery.lost.size())
                << recoverySummary(recovery).toStdString();
            return right;
        } catch (const StoreError& error) {
            EXPECT_FALSE(std::string(error.what()).empty());
            return 0;
        }
    }

    void write(const QByteArray& bytes) const
    {
        QFile file(file_);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        ASSERT_EQ(file.write(bytes), bytes.size());
    }

    QTemporaryDir folder_;
    QString file_ = folder_.filePath(QStringLiteral("garden.underbough"));
    QString saved_ = folder_.filePath(QStringLiteral("saved.underbough"));
    model::Garden garden_;
    StepHistory history_;
    QByteArray whole_;
    Parts parts_;
};

TEST_P(Damaged, FilesAreReadAsWrittenOrRefusedAndRecovered)
{
    Random random(11);
    int opened = 0;
    double share = 0.0;
    for (int i = 0; i < kOfEachKind; ++i) {
        auto bytes = whole_;
        GetParam().harm(bytes, random);
        write(bytes);
        opened += opens() ? 1 : 0;
        ASSERT_EQ(outside::bytes(file_), bytes) << i << ": the damaged file was changed";
        share += static_cast<double>(recovered()) / static_cast<double>(parts_.size());
        ASSERT_EQ(outside::bytes(file_), bytes) << i << ": the damaged file was changed";
    }
    RecordProperty("opened", opened);
    RecordProperty("recovered_percent", static_cast<int>(100.0 * share / kOfEachKind));
    EXPECT_LT(opened, kOfEachKind) << "no harm was done";
    EXPECT_GT(share, 0.4 * kOfEachKind) << "too little comes back";
}

INSTANTIATE_TEST_SUITE_P(Kinds, Damaged,
                         ::testing::Values(Kind{"FlippedBits", flipBits},
                                           Kind{"CutShort", cutShort},
                                           Kind{"SwappedPages", swapPages},
                                           Kind{"LostPages", losePage},
                                           Kind{"Scribbles", scribble}),
                         [](const auto& kind) { return kind.param.name; });

// Brute force: SQLite's own reading against the rows carved from the pages.
TEST(Recovery, OfAWholeFileLosesNothing)
{
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("a.underbough"));
    const QString saved = folder.filePath(QStringLiteral("b.underbough"));
    const QByteArray photo(300'000, 'p'); // over many overflow pages
    writeGardenStore(file, wholeGarden(), {}, {"ash.jpg"},
                     [&](const std::string&) { return photo; });
    const auto recovery = recoverGarden(file, saved);
    EXPECT_EQ(loadGarden(saved).garden, wholeGarden());
    EXPECT_EQ(loadPhoto(saved, "ash.jpg"), photo);
    EXPECT_EQ(recovery.trees, 3U);
    EXPECT_EQ(recovery.visits, 90U);
    EXPECT_EQ(recovery.doubtful, 0U);
    EXPECT_TRUE(recovery.lost.empty());
}

TEST(Recovery, OfNoGardenIsRefused)
{
    const QTemporaryDir folder;
    const QString saved = folder.filePath(QStringLiteral("b.underbough"));
    EXPECT_THROW((void)recoverGarden(QStringLiteral(UNDERBOUGH_TESTS "/broken/binary.json"), saved),
                 StoreError);
    EXPECT_FALSE(QFile::exists(saved));
}

TEST(Recovery, KeepsTheVisitsOfATreeWhoseLimbsAreGone)
{
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("a.underbough"));
    const QString saved = folder.filePath(QStringLiteral("b.underbough"));
    writeGardenStore(file, wholeGarden(), {}, {}, {});
    outside::run(file, "DELETE FROM part WHERE kind = 'limbs' AND tree = 'beech'");
    const auto recovery = recoverGarden(file, saved);
    EXPECT_EQ(recovery.visits, 90U);
    ASSERT_EQ(recovery.lost.size(), 1U);
    EXPECT_NE(recovery.lost.front().find("beech"), std::string::npos);
}

} // namespace
} // namespace app
