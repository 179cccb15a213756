#include "app/store/connection.hpp"
#include "app/store/garden_store.hpp"
#include "app/store/photo_rows.hpp"
#include "app/store/schema.hpp"
#include "model/document/validate.hpp"
#include "model/escaped.hpp"

namespace app {
namespace {

using Lines = std::vector<std::string>;

void checkPages(const QString& path, Lines& lines)
{
    Connection connection(path, Connection::Mode::read);
    Statement check(connection, QStringLiteral("PRAGMA integrity_check(20)"));
    check.run();
    while (check.next())
        if (check.text(0) != "ok")
            lines.push_back(model::escaped(check.text(0)));
}

/// Every state that undo and redo lead to must be a garden too.
void checkHistory(const StoredGarden& stored, Lines& lines)
{
    const auto walk = [&](const auto& first, const auto& last, auto change) {
        model::Garden garden = stored.garden;
        for (auto step = first; step != last; ++step) {
            auto reading = applied(std::move(garden), change(*step));
            if (!reading.garden || !model::validate(*reading.garden).empty())
                return lines.push_back("the step " + model::inQuotes(step->name) +
                                       " of the history leads nowhere");
            garden = std::move(*reading.garden);
        }
    };
    const auto& steps = stored.history.steps;
    const auto undone = std::ranges::find_if(
        steps, [&](const Step& step) { return step.number > stored.history.done; });
    walk(std::reverse_iterator(undone), steps.rend(),
         [](const Step& step) { return reversed(step.change); });
    walk(undone, steps.end(), [](const Step& step) { return step.change; });
}

} // namespace

Lines checkStore(const QString& path)
{
    Lines lines;
    try {
        checkPages(path, lines);
        checkHistory(loadGarden(path), lines);
        for (const auto& name : photoNames(path))
            (void)loadPhoto(path, name);
    } catch (const StoreError& error) {
        lines.emplace_back(error.what());
    }
    return lines;
}

} // namespace app
