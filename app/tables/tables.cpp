#include "app/tables/tables.hpp"

#include <QByteArray>
#include <QFile>

#include <string_view>

namespace app {
namespace {

QByteArray builtIn(const char* name)
{
    QFile file(QLatin1String(":/trees/") + QLatin1String(name));
    if (!file.open(QIODevice::ReadOnly))
        throw model::TableError(std::string(name) + " was not built into the program");
    return file.readAll();
}

std::string_view view(const QByteArray& bytes)
{
    return {bytes.constData(), static_cast<std::size_t>(bytes.size())};
}

} // namespace

model::Tables loadTables()
{
    const QByteArray sources = builtIn("sources.csv");
    const QByteArray wood = builtIn("wood.csv");
    const QByteArray practice = builtIn("practice.csv");
    const QByteArray leaf = builtIn("leaf.csv");
    const QByteArray plants = builtIn("plants.csv");
    return model::readTables({.sources = view(sources),
                              .wood = view(wood),
                              .practice = view(practice),
                              .leaf = view(leaf),
                              .plants = view(plants)});
}

} // namespace app
