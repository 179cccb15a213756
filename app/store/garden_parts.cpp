#include "app/store/garden_parts.hpp"

#include "model/document/field_reader.hpp"
#include "model/document/field_writer.hpp"
#include "model/document/validate.hpp"

#include <algorithm>
#include <tuple>

namespace app {
namespace {

using model::Garden;
using model::Tree;

constexpr const char* kGardenKind = "garden";

/// A list whose items have a row each, under the name that the JSON form gives it.
template <typename Owner, typename Item>
struct PartList {
    const char* kind;
    std::vector<Item> Owner::*items;
};

constexpr std::tuple kGardenLists{
    PartList<Garden, Tree>{"trees", &Garden::trees},
    PartList<Garden, model::Neighbour>{"neighbours", &Garden::neighbours},
    PartList<Garden, model::Planting>{"plantings", &Garden::plantings},
    PartList<Garden, model::Strip>{"strips", &Garden::strips},
    PartList<Garden, model::ElectricLine>{"electric_lines", &Garden::lines},
    PartList<Garden, model::Structure>{"structures", &Garden::structures},
};
constexpr std::tuple kTreeLists{
    PartList<Tree, model::Limb>{"limbs", &Tree::limbs},
    PartList<Tree, model::Visit>{"visits", &Tree::visits},
};

template <typename Lists, typename Visit>
void each(const Lists& lists, Visit visit)
{
    std::apply([&](const auto&... list) { (visit(list), ...); }, lists);
}

template <typename Item>
concept HasOwnRow = std::same_as<Item, Tree> || std::same_as<Item, model::Limb> ||
    std::same_as<Item, model::Visit> || std::same_as<Item, model::Neighbour> ||
    std::same_as<Item, model::Planting> || std::same_as<Item, model::Strip> ||
    std::same_as<Item, model::ElectricLine> || std::same_as<Item, model::Structure>;

/// A visit keeps limbs too, which are part of it: a list has rows of its own by its name as well.
bool hasRows(std::string_view name)
{
    bool known = false;
    const auto look = [&](const auto& list) { known = known || name == list.kind; };
    each(kGardenLists, look);
    each(kTreeLists, look);
    return known;
}

/// Writes and reads one part by itself: the lists that have rows of their own are passed over.
class PartWriter : public model::FieldWriter {
public:
    using model::FieldWriter::list;
    using model::FieldWriter::required;
    template <HasOwnRow Item>
    void required(std::string_view, const std::vector<Item>&)
    {
    }
    template <HasOwnRow Item>
    void list(std::string_view name, const std::vector<Item>& items)
    {
        if (!hasRows(name))
            model::FieldWriter::list(name, items);
    }
};

class PartReader : public model::FieldReader {
public:
    using model::FieldReader::FieldReader;
    using model::FieldReader::list;
    using model::FieldReader::required;
    template <HasOwnRow Item>
    void required(std::string_view, std::vector<Item>&)
    {
    }
    template <HasOwnRow Item>
    void list(std::string_view name, std::vector<Item>& items)
    {
        if (!hasRows(name))
            model::FieldReader::list(name, items);
    }
};

template <typename Item>
Part partOf(const Item& item, std::size_t place)
{
    PartWriter writer;
    model::fields(writer, item);
    return {static_cast<std::int64_t>(place), model::compactJson(writer.object)};
}

/// Names that would come back as unknown fields and then stand in the way of the real ones.
template <typename Lists>
void refuseLists(const Lists& lists, const model::JsonValue& object, const model::Path& path,
                 model::Faults& faults)
{
    each(lists, [&](const auto& list) {
        if (std::ranges::find(object.names, list.kind) != object.names.end())
            model::tell(faults, path / list.kind, "a list", "rows of its own");
    });
}

template <typename Item>
void readPart(const std::string& document, const model::Path& path, model::Faults& faults,
              Item& into)
{
    const auto parsed = model::parseJson(document);
    const auto* value = std::get_if<model::JsonValue>(&parsed);
    if (value == nullptr) {
        const auto& fault = std::get<model::Fault>(parsed);
        return model::tell(faults, path, fault.found, fault.expected);
    }
    if (value->kind != model::JsonValue::Kind::object)
        return model::tell(faults, path, model::described(*value), "an object in { }");
    if constexpr (std::same_as<Item, Garden>)
        refuseLists(kGardenLists, *value, path, faults);
    if constexpr (std::same_as<Item, Tree>)
        refuseLists(kTreeLists, *value, path, faults);
    PartReader reader(*value, path, faults);
    model::fields(reader, into);
}

/// Gathers what differs between two gardens.
class Comparison {
public:
    GardenChange change;

    void compareGardens(const Garden& before, const Garden& after)
    {
        note({kGardenKind, {}, {}}, partOf(before, 0), partOf(after, 0));
        each(kGardenLists, [&](const auto& list) {
            compareLists({list.kind, {}, {}}, before.*list.items, after.*list.items);
        });
    }

    void note(PartKey key, std::optional<Part> before, std::optional<Part> after)
    {
        if (before != after)
            change.push_back({std::move(key), std::move(before), std::move(after)});
    }

    template <typename Item>
    void compareLists(PartKey key, const std::vector<Item>& before, const std::vector<Item>& after)
    {
        std::map<std::string_view, std::size_t> left;
        for (std::size_t i = 0; i < before.size(); ++i)
            left.emplace(before[i].id, i);
        for (std::size_t i = 0; i < after.size(); ++i) {
            key.id = after[i].id;
            const auto found = left.find(after[i].id);
            if (found == left.end()) {
                note(key, std::nullopt, partOf(after[i], i));
                compareInside(Item{}, after[i]);
                continue;
            }
            const std::size_t was = found->second;
            left.erase(found);
            if (was == i && before[was] == after[i])
                continue;
            note(key, partOf(before[was], was), partOf(after[i], i));
            compareInside(before[was], after[i]);
        }
        for (const auto& [id, was] : left) {
            key.id = std::string(id);
            note(key, partOf(before[was], was), std::nullopt);
            compareInside(before[was], Item{});
        }
    }

private:
    template <typename Item>
    void compareInside(const Item& before, const Item& after)
    {
        if constexpr (std::same_as<Item, Tree>)
            each(kTreeLists, [&](const auto& list) {
                compareLists({list.kind, before.id.empty() ? after.id : before.id, {}},
                             before.*list.items, after.*list.items);
            });
    }
};

/// Makes a garden of another and a change.
class Application {
public:
    explicit Application(const GardenChange& change)
    {
        for (const auto& part : change)
            lists_[{part.key.kind, part.key.tree}].push_back(&part);
    }

    void applyTo(Garden& garden)
    {
        const model::Path top;
        for (const auto* part : take(kGardenKind, {}))
            if (part->after)
                readPart(part->after->document, top, faults, garden = withoutHead(garden));
        each(kGardenLists, [&](const auto& list) {
            applyToList(list.kind, {}, top / list.kind, garden.*list.items);
        });
        const model::Path trees = top / "trees";
        for (std::size_t i = 0; i < garden.trees.size(); ++i) {
            const model::Path tree = trees / i;
            each(kTreeLists, [&](const auto& list) {
                applyToList(list.kind, garden.trees[i].id, tree / list.kind,
                            garden.trees[i].*list.items);
            });
        }
        for (const auto& [list, parts] : lists_)
            if (parts.front()->after)
                model::tell(faults, top, "parts of " + model::inQuotes(list.second),
                            "a tree of that id to own them");
    }

    model::Faults faults;

private:
    using Changes = std::vector<const PartChange*>;

    /// The changes of one list, each only once.
    Changes take(const std::string& kind, const std::string& tree)
    {
        auto node = lists_.extract({kind, tree});
        return node.empty() ? Changes{} : std::move(node.mapped());
    }

    template <typename Owner, typename Lists>
    static Owner withoutHead(Owner& owner, const Lists& lists)
    {
        Owner bare;
        each(lists, [&](const auto& list) { bare.*list.items = std::move(owner.*list.items); });
        return bare;
    }
    static Garden withoutHead(Garden& garden) { return withoutHead(garden, kGardenLists); }

    template <typename Item>
    static Item bare(Item& item)
    {
        if constexpr (std::same_as<Item, Tree>)
            return withoutHead(item, kTreeLists);
        else
            return Item{};
    }

    template <typename Item>
    void applyToList(const std::string& kind, const std::string& tree, const model::Path& path,
                     std::vector<Item>& items)
    {
        std::map<std::string_view, const PartChange*> changes;
        for (const auto* part : take(kind, tree))
            changes.emplace(part->key.id, part);
        if (changes.empty())
            return;
        std::vector<std::pair<std::int64_t, Item>> placed;
        for (std::size_t i = 0; i < items.size(); ++i) {
            const auto found = changes.find(items[i].id);
            if (found == changes.end()) {
                placed.emplace_back(static_cast<std::int64_t>(i), std::move(items[i]));
                continue;
            }
            if (found->second->after)
                placed.emplace_back(found->second->after->place,
                                    read(*found->second, path, bare(items[i])));
            changes.erase(found);
        }
        for (const auto& [id, part] : changes)
            if (part->after)
                placed.emplace_back(part->after->place, read(*part, path, Item{}));
        std::ranges::stable_sort(placed, {}, [](const auto& item) { return item.first; });
        items.clear();
        for (auto& item : placed)
            items.push_back(std::move(item.second));
    }

    template <typename Item>
    Item read(const PartChange& part, const model::Path& path, Item into)
    {
        const auto place = path / static_cast<std::size_t>(part.after->place);
        readPart(part.after->document, place, faults, into);
        if (into.id != part.key.id)
            model::tell(faults, place, "the id " + model::inQuotes(into.id),
                        "the id of its row, " + model::inQuotes(part.key.id));
        return into;
    }

    std::map<std::pair<std::string, std::string>, Changes> lists_;
};

} // namespace

Parts partsOf(const Garden& garden)
{
    Parts parts;
    parts[{kGardenKind, {}, {}}] = partOf(garden, 0);
    for (auto& part : difference(Garden{}, garden))
        if (part.after)
            parts[std::move(part.key)] = std::move(*part.after);
    return parts;
}

model::GardenReading gardenOf(const Parts& parts)
{
    if (!parts.contains({kGardenKind, {}, {}}))
        return {std::nullopt, {{{}, "no garden", "one, with its place and its gust"}}};
    GardenChange change;
    for (const auto& [key, part] : parts)
        change.push_back({key, std::nullopt, part});
    auto reading = applied({}, change);
    if (reading.garden)
        reading.faults = model::validate(*reading.garden);
    if (!reading.faults.empty())
        reading.garden.reset();
    return reading;
}

GardenChange difference(const Garden& before, const Garden& after)
{
    Comparison comparison;
    comparison.compareGardens(before, after);
    std::ranges::sort(comparison.change, {}, &PartChange::key);
    return std::move(comparison.change);
}

model::GardenReading applied(Garden garden, const GardenChange& change)
{
    Application application(change);
    application.applyTo(garden);
    if (!application.faults.empty())
        return {std::nullopt, std::move(application.faults)};
    return {std::move(garden), {}};
}

GardenChange reversed(GardenChange change)
{
    for (auto& part : change)
        std::swap(part.before, part.after);
    return change;
}

GardenChange merged(const GardenChange& first, const GardenChange& then)
{
    std::map<PartKey, PartChange> both;
    for (const auto& part : first)
        both.emplace(part.key, part);
    for (const auto& part : then) {
        const auto [found, isNew] = both.emplace(part.key, part);
        if (!isNew)
            found->second.after = part.after;
    }
    GardenChange change;
    for (auto& [key, part] : both)
        if (part.before != part.after)
            change.push_back(std::move(part));
    return change;
}

} // namespace app
