#include "app/view/why.hpp"

#include <array>
#include <stdexcept>

namespace app::why {
namespace {

constexpr std::array kNames = {"limb", "strip", "planting", "year",     "gain",
                               "cut",  "cuts",  "tried",    "allTried", "who"};

} // namespace

QString key(Kind kind, const std::string& id)
{
    return QLatin1String(kNames.at(static_cast<std::size_t>(kind))) + QLatin1Char(':') +
           QString::fromStdString(id);
}

Question question(const QString& key)
{
    const QString name = key.section(QLatin1Char(':'), 0, 0);
    for (std::size_t i = 0; i < kNames.size(); ++i)
        if (name == QLatin1String(kNames[i]))
            return {static_cast<Kind>(i), key.section(QLatin1Char(':'), 1).toStdString()};
    throw std::out_of_range("nothing to be explained is called '" + key.toStdString() + "'");
}

} // namespace app::why
