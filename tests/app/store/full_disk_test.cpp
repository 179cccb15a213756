#include "tests/app/shipped_tables.hpp"
#include "tests/app/store/full_disk.hpp"

#include "app/document/document.hpp"
#include "tests/app/small_garden.hpp"
#include "tests/app/store/outside_sqlite.hpp"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

namespace app {
namespace {

constexpr int kMostWrites = 300;

/// A visit with a note that takes several pages of the file.
model::Garden withVisit()
{
    auto garden = smallGarden();
    model::Visit visit;
    visit.id = "v1";
    visit.date = std::chrono::year(2024) / 7 / 14;
    visit.note = std::string(9000, 'x');
    garden.trees[0].visits = {visit};
    return garden;
}

class FullDisk : public ::testing::Test {
protected:
    ~FullDisk() override { outside::emptyDisk(); }
    QString path(const char* name) const { return folder_.filePath(QLatin1String(name)); }

    QTemporaryDir folder_;
};

TEST_F(FullDisk, AtAnyWriteOfAnEditKeepsTheFileAndWhatWasTyped)
{
    const QString file = path("garden.underbough");
    int writes = 0;
    for (bool failed = true; failed; ++writes) {
        ASSERT_LT(writes, kMostWrites);
        writeGardenStore(file, smallGarden(), {}, {}, {});
        Document document(tables());
        ASSERT_EQ(document.open(file), QString());
        outside::fillDiskAfter(writes);
        EXPECT_EQ(document.change(QStringLiteral("visit"), withVisit()), QString());
        outside::emptyDisk();
        failed = document.isDirty();
        EXPECT_EQ(*document.garden(), withVisit()) << writes;
        EXPECT_EQ(outside::integrity(file), "ok") << writes;
        if (!failed)
            break;
        EXPECT_TRUE(document.fileProblem().contains(QStringLiteral("the disk is full")))
            << writes << ": " << document.fileProblem().toStdString();
        EXPECT_EQ(loadGarden(file).garden, smallGarden()) << writes;
        EXPECT_EQ(document.save(), QString()) << writes << ": with room again";
        EXPECT_EQ(loadGarden(file).garden, withVisit()) << writes;
        EXPECT_EQ(loadGarden(file).history.steps.size(), 1U) << writes;
    }
    EXPECT_GT(writes, 8);
}

TEST_F(FullDisk, AtAnyWriteOfANewFileKeepsTheOldOne)
{
    const QString file = path("garden.underbough");
    writeGardenStore(file, smallGarden(), {}, {}, {});
    const QByteArray before = outside::bytes(file);
    int writes = 0;
    for (; writes < kMostWrites; ++writes) {
        Document document(tables());
        document.start(withVisit());
        outside::fillDiskAfter(writes);
        const QString problem = document.saveAs(file);
        outside::emptyDisk();
        if (problem.isEmpty())
            break;
        EXPECT_TRUE(problem.contains(QStringLiteral("the disk is full"))) << problem.toStdString();
        EXPECT_EQ(outside::bytes(file), before) << writes;
        EXPECT_EQ(QDir(folder_.path()).entryList(QDir::Files).size(), 1) << writes;
    }
    EXPECT_GT(writes, 8);
    EXPECT_EQ(loadGarden(file).garden, withVisit());
}

TEST_F(FullDisk, WhileAnOlderFileIsRaisedLeavesItAsItWas)
{
    const QString kept = QStringLiteral(UNDERBOUGH_TESTS "/app/store/version-1.underbough");
    const QString file = path("old.underbough");
    int writes = 0;
    for (; writes < kMostWrites; ++writes) {
        QFile::remove(file);
        ASSERT_TRUE(QFile::copy(kept, file));
        QFile::setPermissions(file, QFile::ReadOwner | QFile::WriteOwner);
        outside::fillDiskAfter(writes);
        bool failed = false;
        try {
            (void)raiseGarden(file);
        } catch (const StoreError& error) {
            failed = true;
            EXPECT_EQ(error.kind(), StoreError::Kind::full) << writes;
        }
        outside::emptyDisk();
        EXPECT_EQ(loadGarden(file).version, failed ? 1 : 2) << writes;
        EXPECT_EQ(loadGarden(file).garden.trees.size(), 1U) << writes;
        if (!failed)
            break;
    }
    EXPECT_GT(writes, 8);
}

} // namespace
} // namespace app
