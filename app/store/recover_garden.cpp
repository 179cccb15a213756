#include "app/store/recover_garden.hpp"

#include "app/store/carve.hpp"
#include "app/store/checksum.hpp"
#include "app/store/rows.hpp"

#include <QDir>
#include <QFileInfo>

#include <algorithm>
#include <set>

namespace app {
namespace {

const PartKey kGarden{"garden", {}, {}};

std::string textOf(const CarvedValue& value)
{
    const auto* text = std::get_if<CarvedText>(&value);
    return text == nullptr ? std::string() : text->utf8.toStdString();
}

template <typename... Kinds>
bool startsWith(const CarvedRow& row, std::size_t size)
{
    std::size_t column = 0;
    return row.size() == size && (std::holds_alternative<Kinds>(row[column++]) && ...);
}

/// Everything that a file's pages still hold.
class Wreck {
public:
    Parts parts;
    std::set<PartKey> doubtful;
    Photos photos;
    std::map<PartKey, std::pair<std::int64_t, Part>> past; ///< as its newest step left a part

    explicit Wreck(const QString& path)
    {
        carveRows(path, [this](const CarvedRow& row) { take(row); });
    }

private:
    void take(const CarvedRow& row)
    {
        using Number = std::int64_t;
        if (startsWith<CarvedText, CarvedText, CarvedText, Number, CarvedText, Number>(row, 6))
            takePart(row);
        else if (startsWith<CarvedText, QByteArray, Number>(row, 3) ||
                 startsWith<CarvedText, QByteArray, Number>(row, 6))
            takePhoto(row);
        else if (startsWith<Number, CarvedText, CarvedText, CarvedText>(row, 8))
            takeStep(row);
    }

    void takePart(const CarvedRow& row)
    {
        PartKey key{textOf(row[0]), textOf(row[1]), textOf(row[2])};
        Part part{std::get<std::int64_t>(row[3]), textOf(row[4])};
        const bool sound = checksumOf(key, part) == std::get<std::int64_t>(row[5]);
        if (parts.contains(key) && !(sound && doubtful.contains(key)))
            return;
        if (sound)
            doubtful.erase(key);
        else
            doubtful.insert(key);
        parts[std::move(key)] = std::move(part);
    }

    void takePhoto(const CarvedRow& row)
    {
        const auto name = textOf(row[0]);
        const auto& bytes = std::get<QByteArray>(row[1]);
        if (Checksum().add(name).add(bytes).value() == std::get<std::int64_t>(row[2]))
            photos[name] = bytes;
    }

    void takeStep(const CarvedRow& row)
    {
        const auto* place = std::get_if<std::int64_t>(&row[6]);
        if (place == nullptr)
            return;
        auto& newest = past[{textOf(row[1]), textOf(row[2]), textOf(row[3])}];
        if (std::get<std::int64_t>(row[0]) >= newest.first)
            newest = {std::get<std::int64_t>(row[0]), {*place, textOf(row[7])}};
    }
};

/// A trunk in place of limbs that are lost, so that a tree keeps its visits.
Part plainTrunk()
{
    return {0, R"({"id": "trunk", "name": "", "stations": [{"position_m": [0, 0, 0], )"
               R"("diameter_m": 0.1}, {"position_m": [0, 0, 2], "diameter_m": 0.05}], )"
               R"("measured": "guessed"})"};
}

/// Parts made into a garden that can be reckoned with, by leaving out what can't.
class Mending {
public:
    Parts parts;
    std::vector<std::string> lost;

    explicit Mending(const Wreck& wreck) : parts(wreck.parts)
    {
        findOwners(wreck);
        addTrunks();
        for (std::size_t round = 0; round <= wreck.parts.size(); ++round) {
            number();
            const auto reading = gardenOf(parts);
            if (reading.garden)
                return;
            for (const auto& fault : reading.faults)
                drop(fault);
            addTrunks();
        }
    }

private:
    /// What must be there for other parts to stand in: from the history, where it is gone.
    void findOwners(const Wreck& wreck)
    {
        std::set<PartKey> wanted{kGarden};
        for (const auto& [key, part] : parts)
            if (!key.tree.empty())
                wanted.insert({"trees", {}, key.tree});
        for (const auto& key : wanted) {
            if (parts.contains(key))
                continue;
            if (const auto past = wreck.past.find(key); past != wreck.past.end())
                parts[key] = past->second.second;
            else
                lose(key);
        }
    }

    void lose(const PartKey& key)
    {
        if (key == kGarden) {
            lost.emplace_back("the garden's place and gust, which are to be set anew");
            parts[key] = partsOf(model::Garden{}).at(kGarden);
            return;
        }
        lost.push_back("of " + key.kind + " " + model::inQuotes(key.id) +
                       (key.tree.empty() ? "" : " (" + key.tree + ")"));
        parts.erase(key);
        if (key.kind == "trees")
            std::erase_if(parts, [&](const auto& part) { return part.first.tree == key.id; });
    }

    void addTrunks()
    {
        for (const auto& [key, part] : Parts(parts)) {
            const bool bare =
                key.kind == "trees" && std::ranges::none_of(parts, [&](const auto& other) {
                    return other.first.kind == "limbs" && other.first.tree == key.id;
                });
            if (!bare)
                continue;
            lost.push_back("all limbs of " + model::inQuotes(key.id) +
                           ", for which a plain trunk stands");
            parts[{"limbs", key.id, "trunk"}] = plainTrunk();
        }
    }

    /// Places without gaps, so that a fault's pointer names a part.
    void number()
    {
        std::map<std::pair<std::string, std::string>, std::vector<PartKey>> lists;
        for (const auto& [key, part] : parts)
            lists[{key.kind, key.tree}].push_back(key);
        order_.clear();
        for (auto& [list, keys] : lists) {
            std::ranges::stable_sort(keys, {},
                                     [&](const PartKey& key) { return parts.at(key).place; });
            for (std::size_t i = 0; i < keys.size(); ++i)
                parts[keys[i]].place = static_cast<std::int64_t>(i);
            order_[list.first + "/" + list.second] = std::move(keys);
        }
    }

    const PartKey* at(const std::string& kind, const std::string& tree, const QString& index) const
    {
        const auto list = order_.find(kind + "/" + tree);
        const auto i = index.toULong();
        return list == order_.end() || i >= list->second.size() ? nullptr : &list->second[i];
    }

    void drop(const model::Fault& fault)
    {
        const auto steps = QString::fromStdString(fault.pointer).split(QLatin1Char('/'));
        const PartKey* key = steps.size() < 3 ? nullptr : at(steps[1].toStdString(), {}, steps[2]);
        if (key != nullptr && key->kind == "trees" && steps.size() > 4)
            if (const auto* inside = at(steps[3].toStdString(), key->id, steps[4]))
                key = inside;
        if (key != nullptr && key->kind == "trees" && steps.size() == 4 && steps[3] == u"limbs")
            return dropLimbs(key->id);
        const PartKey gone = key == nullptr ? kGarden : *key;
        if (parts.contains(gone))
            lose(gone);
    }

    /// Limbs that make no tree between them.
    void dropLimbs(const std::string& tree)
    {
        std::erase_if(parts, [&](const auto& part) {
            return part.first.kind == "limbs" && part.first.tree == tree;
        });
    }

    std::map<std::string, std::vector<PartKey>> order_;
};

std::size_t countOf(const Parts& parts, std::string_view kind)
{
    return static_cast<std::size_t>(
        std::ranges::count_if(parts, [&](const auto& part) { return part.first.kind == kind; }));
}

} // namespace

Recovery recoverGarden(const QString& damaged, const QString& to)
{
    const Wreck wreck(damaged);
    if (wreck.parts.empty() && wreck.photos.empty())
        throw StoreError(StoreError::Kind::damaged, "nothing that can be read",
                         "some part of a garden");
    const Mending mended(wreck);
    const auto reading = gardenOf(mended.parts);
    if (!reading.garden)
        throw StoreError(StoreError::Kind::unfit, reading.faults);
    std::vector<std::string> names;
    for (const auto& [name, bytes] : wreck.photos)
        names.push_back(name);
    writeGardenStore(to, *reading.garden, {}, names,
                     [&](const std::string& name) { return wreck.photos.at(name); });
    Recovery recovery;
    recovery.trees = countOf(mended.parts, "trees");
    recovery.limbs = countOf(mended.parts, "limbs");
    recovery.visits = countOf(mended.parts, "visits");
    recovery.things = mended.parts.size() - recovery.trees - recovery.limbs - recovery.visits - 1;
    recovery.photos = wreck.photos.size();
    recovery.doubtful = static_cast<std::size_t>(std::ranges::count_if(
        wreck.doubtful, [&](const PartKey& key) { return mended.parts.contains(key); }));
    recovery.lost = mended.lost;
    return recovery;
}

QString recoveredName(const QString& path)
{
    const QFileInfo file(path);
    for (int number = 1;; ++number) {
        const QString tail = number == 1 ? QString() : QStringLiteral(" (%1)").arg(number);
        const QString name = file.dir().filePath(
            QStringLiteral("%1, recovered%2.%3")
                .arg(file.completeBaseName(), tail, QLatin1String(kStoreSuffix)));
        if (!QFileInfo::exists(name))
            return name;
    }
}

} // namespace app
