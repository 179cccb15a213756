#include <gtest/gtest.h>

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <QTextStream>

namespace {

/// What one run of the real program left behind.
struct Ran {
    int status{};
    QByteArray out;
    QByteArray err;
};

Ran run(const QStringList& arguments)
{
    QProcess process;
    process.start(QStringLiteral(UNDERBOUGH_PROGRAM), arguments);
    EXPECT_TRUE(process.waitForFinished(60'000)) << "no end in a minute";
    EXPECT_EQ(process.exitStatus(), QProcess::NormalExit) << "crashed";
    return {process.exitCode(), process.readAllStandardOutput(), process.readAllStandardError()};
}

QByteArray hashOf(const QString& path)
{
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    QCryptographicHash hash(QCryptographicHash::Sha256);
    hash.addData(&file);
    return hash.result();
}

/// One row of tests/broken/expected.tsv.
struct Broken {
    QString path;
    QByteArray pointer;
    QByteArray part;
};

std::vector<Broken> brokenGardens()
{
    const QDir folder(QStringLiteral(UNDERBOUGH_TESTS "/broken"));
    QFile table(folder.filePath(QStringLiteral("expected.tsv")));
    EXPECT_TRUE(table.open(QIODevice::ReadOnly));
    std::vector<Broken> rows;
    while (!table.atEnd()) {
        const QByteArray line = table.readLine().trimmed();
        if (line.isEmpty() || line.startsWith('#'))
            continue;
        const QList<QByteArray> cells = line.split('\t');
        rows.push_back({folder.filePath(QString::fromUtf8(cells.at(0))), cells.at(1), cells.at(2)});
    }
    return rows;
}

TEST(Program, RefusesEveryBrokenGardenInOneLineAndLeavesItAlone)
{
    const auto gardens = brokenGardens();
    ASSERT_GE(gardens.size(), 40U);
    for (const Broken& garden : gardens) {
        const QByteArray before = hashOf(garden.path);
        const Ran ran = run({QStringLiteral("assess"), garden.path});
        EXPECT_EQ(ran.status, 2) << garden.path.toStdString();
        EXPECT_TRUE(ran.out.isEmpty()) << garden.path.toStdString();
        EXPECT_EQ(ran.err.count('\n'), 1) << ran.err.toStdString();
        EXPECT_TRUE(ran.err.startsWith(garden.path.toUtf8() + ": " + garden.pointer))
            << ran.err.toStdString();
        EXPECT_TRUE(ran.err.contains(garden.part)) << ran.err.toStdString();
        EXPECT_EQ(hashOf(garden.path), before) << garden.path.toStdString();
    }
}

TEST(Program, RefusesAHugeFileWithoutReadingIt)
{
    const QTemporaryDir folder;
    QFile huge(folder.filePath(QStringLiteral("huge.json")));
    ASSERT_TRUE(huge.open(QIODevice::WriteOnly));
    ASSERT_TRUE(huge.resize(300LL * 1024 * 1024)); // with holes: it takes no room on the disk
    huge.close();
    const Ran ran = run({QStringLiteral("check"), huge.fileName()});
    EXPECT_EQ(ran.status, 2);
    EXPECT_EQ(ran.err.count('\n'), 1) << ran.err.toStdString();
    EXPECT_TRUE(ran.err.contains("MB")) << ran.err.toStdString();
}

// The same options under the same names; of the English only names of files and what is typed is
// left.
TEST(Program, HelpsInTheLanguageAskedForOnTheSameLine)
{
    const QStringList verbs{{},
                            QStringLiteral("assess"),
                            QStringLiteral("suggest"),
                            QStringLiteral("headroom"),
                            QStringLiteral("light"),
                            QStringLiteral("diary"),
                            QStringLiteral("due"),
                            QStringLiteral("calendar"),
                            QStringLiteral("report"),
                            QStringLiteral("day"),
                            QStringLiteral("check"),
                            QStringLiteral("export"),
                            QStringLiteral("import"),
                            QStringLiteral("recover"),
                            QStringLiteral("sun")};
    for (const QString& verb : verbs) {
        QStringList words{QStringLiteral("--help")};
        if (!verb.isEmpty())
            words.prepend(verb);
        const Ran english = run(words + QStringList{QStringLiteral("--language=en")});
        const Ran german =
            run(words + QStringList{QStringLiteral("--language"), QStringLiteral("de")});
        SCOPED_TRACE(verb.toStdString());
        EXPECT_EQ(english.status, 0);
        EXPECT_EQ(german.status, 0);
        EXPECT_TRUE(english.out.contains("\nUsage: underbough"));
        EXPECT_TRUE(german.out.contains("\nAufruf: underbough"));
        EXPECT_TRUE(german.out.contains("\nOptionen:\n"));
        for (const char* word : {" the ", " and ", "such as", "(needed)", "Options", "FILE"})
            EXPECT_FALSE(german.out.contains(word)) << word << "\n" << german.out.toStdString();
        for (const auto& line : english.out.split('\n'))
            if (const auto option = line.trimmed().split(' ').front(); option.startsWith("--")) {
                EXPECT_TRUE(german.out.contains("  " + option)) << option.toStdString();
            }
    }
}

TEST(Program, WorksFromAnyFolder)
{
    const QTemporaryDir folder;
    QProcess process;
    process.setWorkingDirectory(folder.path());
    process.start(
        QStringLiteral(UNDERBOUGH_PROGRAM),
        {QStringLiteral("check"), QStringLiteral(UNDERBOUGH_TREES "/examples/apple-path.json")});
    ASSERT_TRUE(process.waitForFinished(60'000));
    EXPECT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
}

} // namespace
