#include "tests/fuzz/seeds.hpp"

#include "app/store/garden_store.hpp"
#include "tests/app/small_garden.hpp"
#include "tests/app/store/picture_files.hpp"
#include "tests/fuzz/targets.hpp"

#include <QTemporaryDir>

#include <filesystem>
#include <fstream>
#include <sstream>

namespace fuzz {
namespace {

namespace files = std::filesystem;

const files::path kTests{UNDERBOUGH_TESTS};
const files::path kTrees{UNDERBOUGH_TREES};

std::string bytesOf(const files::path& path)
{
    std::ifstream in(path, std::ios::binary);
    std::ostringstream all;
    all << in.rdbuf();
    return all.str();
}

void addFolder(const std::string& target, const files::path& folder, const std::string& suffix,
               std::vector<Seed>& seeds)
{
    if (!files::exists(folder))
        return;
    for (const auto& entry : files::directory_iterator(folder))
        if (suffix.empty() || entry.path().extension() == suffix)
            seeds.push_back({target, entry.path().filename().string(), bytesOf(entry.path())});
}

/// The head of a table and its first rows.
std::string start(const std::string& table, int rows)
{
    std::istringstream lines(table);
    std::string line;
    std::string result;
    for (int i = 0; i <= rows && std::getline(lines, line); ++i)
        result += line + '\n';
    return result;
}

/// Of the sources those that other tables name, so that the seed stays small.
std::string namedIn(const std::string& tables, const std::string& sources)
{
    std::istringstream lines(sources);
    std::string line;
    std::getline(lines, line);
    std::string result = line + '\n';
    while (std::getline(lines, line))
        if (tables.find(line.substr(0, line.find(','))) != std::string::npos)
            result += line + '\n';
    return result;
}

Seed tablesOf(int rows)
{
    std::string tables;
    for (const char* name : {"wood.csv", "practice.csv", "leaf.csv", "plants.csv"})
        tables += kNextTable + start(bytesOf(kTrees / name), rows);
    return {"tables", std::to_string(rows) + " rows",
            namedIn(tables, bytesOf(kTrees / "sources.csv")) + tables};
}

std::string text(const QByteArray& bytes)
{
    return bytes.toStdString();
}

Seed storeWithPhoto()
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("garden.underbough"));
    auto garden = app::smallGarden();
    garden.trees[0].photos = {{"ash.jpg", {}, {}, {}, {}}};
    (void)app::writeGardenStore(path, garden, {}, {"ash.jpg"},
                                [](const std::string&) { return app::test::jpeg(16, 12, 6); });
    return {"gardenFile", "one photo", bytesOf(path.toStdString())};
}

std::string png()
{
    QImage image(9, 7, QImage::Format_RGB32);
    image.fill(Qt::green);
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "PNG");
    return text(bytes);
}

} // namespace

std::vector<Seed> seeds()
{
    std::vector<Seed> seeds;
    for (const char* target : {"json", "garden"}) {
        addFolder(target, kTests / "broken", ".json", seeds);
        addFolder(target, kTrees / "examples", ".json", seeds);
    }
    for (const int rows : {1, 4})
        seeds.push_back(tablesOf(rows));
    addFolder("gardenFile", kTests / "app/store", ".underbough", seeds);
    seeds.push_back(storeWithPhoto());
    for (int orientation = 1; orientation <= 8; ++orientation)
        seeds.push_back({"photo", "held " + std::to_string(orientation) + ".jpg",
                         text(app::test::jpeg(24, 16, orientation))});
    seeds.push_back({"photo", "plain.png", png()});
    return seeds;
}

std::vector<Seed> found()
{
    std::vector<Seed> result;
    for (const char* target : {"json", "garden", "tables", "gardenFile", "photo"})
        addFolder(target, kTests / "fuzz/found" / target, "", result);
    return result;
}

} // namespace fuzz
