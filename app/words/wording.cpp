#include "app/words/wording.hpp"

#include "app/words/limb_words.hpp"

namespace app {
namespace {

QString quoted(const std::string& name, const std::string& id)
{
    return Words::tr("“%1”").arg(QString::fromStdString(name.empty() ? id : name));
}

/// Without a botanist's remarks, in the language spoken: app/language/plants_de.ts has them.
QString commonName(const std::string& common, const std::string& latin)
{
    const std::string plain = common.substr(0, common.find(" ("));
    return plain.empty() ? QString::fromStdString(latin)
                         : QCoreApplication::translate("Plants", plain.c_str());
}

template <class Things>
const auto* named(const Things& things, const std::string& id)
{
    const auto found = std::find_if(things.begin(), things.end(),
                                    [&](const auto& thing) { return thing.id == id; });
    return found == things.end() ? nullptr : &*found;
}

} // namespace

QString limbName(const Wording& wording, const std::string& id)
{
    const auto* limb = named(wording.tree.limbs, id);
    const bool isNamed = limb && !limb->name.empty();
    return quoted(isNamed ? limb->name : limbIdWords(id).toStdString(), id);
}

QString thingName(const model::Garden& garden, const std::string& id)
{
    if (const auto* strip = named(garden.strips, id))
        return quoted(strip->name, id);
    if (const auto* line = named(garden.lines, id))
        return quoted(line->name, id);
    if (const auto* structure = named(garden.structures, id))
        return quoted(structure->name, id);
    if (const auto* planting = named(garden.plantings, id))
        return quoted(planting->name, id);
    if (const auto* tree = named(garden.trees, id))
        return quoted(tree->name, id);
    if (const auto* neighbour = named(garden.neighbours, id))
        return quoted(neighbour->name, id);
    return quoted({}, id);
}

QString subjectName(const Wording& wording, const std::string& id)
{
    if (id.empty())
        return treeName(wording.tree, wording.species);
    if (named(wording.tree.limbs, id))
        return limbName(wording, id);
    return thingName(wording.garden, id);
}

QString treeName(const model::Tree& tree, const model::Species& species)
{
    if (tree.name.empty())
        return Words::tr("the %1").arg(commonName(species));
    return quoted(tree.name, tree.id);
}

QString speciesName(const model::Species& species)
{
    const QString latin = QString::fromStdString(species.latin);
    const QString common = commonName(species);
    return common == latin ? latin : QStringLiteral("%1 (%2)").arg(common, latin);
}

QString commonName(const model::Species& species)
{
    return commonName(species.common, species.latin);
}

QString commonName(const model::Plant& plant)
{
    return commonName(plant.common, plant.latin);
}

QString namesOf(const std::string& common, const std::string& latin)
{
    QStringList names{commonName(common, latin), QString::fromStdString(common),
                      QString::fromStdString(latin)};
    names.removeDuplicates();
    return names.join(QLatin1Char('\n'));
}

QString listed(const Units& units, const QStringList& parts)
{
    // The C locale has no "and"; the source sentences are English.
    const bool plain = units.locale().language() == QLocale::C;
    return (plain ? QLocale(QLocale::English) : units.locale()).createSeparatedList(parts);
}

QString capitalised(QString sentence)
{
    if (!sentence.isEmpty())
        sentence[0] = sentence[0].toUpper();
    return sentence;
}

QString signWords(model::Sign sign)
{
    switch (sign) {
    case model::Sign::fungus:
        return Words::tr("brackets or mushrooms on stem or roots");
    case model::Sign::oozing:
        return Words::tr("wet or bleeding bark");
    case model::Sign::heavingSoil:
        return Words::tr("soil lifting or cracking at the base");
    case model::Sign::newLean:
        return Words::tr("a new or growing lean");
    case model::Sign::hungBranch:
        return Words::tr("a broken branch caught in the crown");
    case model::Sign::deadTop:
        return Words::tr("a top that has died back");
    case model::Sign::rootsCut:
        return Words::tr("roots cut by digging or paving");
    case model::Sign::cavityAtBase:
        return Words::tr("a hollow at the foot of the stem");
    case model::Sign::batsOrHole:
        return Words::tr("a hole that bats or birds use");
    case model::Sign::nest:
        return Words::tr("a nest in use");
    }
    return {};
}

} // namespace app
