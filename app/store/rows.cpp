#include "app/store/rows.hpp"

#include "app/store/checksum.hpp"

namespace app {
namespace {

using Kind = StoreError::Kind;

StoreError damaged(const std::string& what)
{
    return {Kind::damaged, "damage in " + what,
            "a garden file as it was written; \"underbough recover\" saves what can be read"};
}

std::int64_t checksumOf(const Head& head)
{
    return Checksum()
        .add(head.edition.key)
        .add(head.edition.count)
        .add(head.partsSum)
        .add(head.done)
        .value();
}

void add(Checksum& sum, const std::optional<Part>& part)
{
    if (part)
        sum.add(part->place).add(part->document);
    else
        sum.add(std::string_view("-"));
}

std::int64_t checksumOf(const Step& step)
{
    Checksum sum;
    sum.add(step.number).add(step.name).add(step.gesture);
    for (const auto& part : step.change) {
        sum.add(part.key.kind).add(part.key.tree).add(part.key.id);
        add(sum, part.before);
        add(sum, part.after);
    }
    return sum.value();
}

Statement& bind(Statement& statement, const PartKey& key)
{
    return statement.bind(key.kind).bind(key.tree).bind(key.id);
}

Statement& bind(Statement& statement, const std::optional<Part>& part)
{
    return part ? statement.bind(part->place).bind(part->document)
                : statement.bindNull().bindNull();
}

PartKey keyAt(const Statement& statement, int column)
{
    return {statement.text(column), statement.text(column + 1), statement.text(column + 2)};
}

std::optional<Part> partAt(const Statement& statement, int column)
{
    if (statement.isNull(column))
        return std::nullopt;
    return Part{statement.number(column), statement.text(column + 1)};
}

} // namespace

Head readHead(Connection& connection, int version)
{
    Statement statement(
        connection, version < 2
                        ? QStringLiteral("SELECT key, edition, parts_sum, crc, 0 FROM head")
                        : QStringLiteral("SELECT key, edition, parts_sum, crc, done FROM head"));
    statement.run();
    if (!statement.next())
        throw damaged("its head");
    const Head head{
        {statement.text(0), statement.number(1)}, statement.number(2), statement.number(4)};
    if (checksumOf(head) != statement.number(3))
        throw damaged("its head");
    return head;
}

void writeHead(Connection& connection, const Head& head)
{
    Statement statement(connection,
                        QStringLiteral("INSERT OR REPLACE INTO head(id, key, edition, parts_sum, "
                                       "done, crc) VALUES(1, ?, ?, ?, ?, ?)"));
    statement.bind(head.edition.key)
        .bind(head.edition.count)
        .bind(head.partsSum)
        .bind(head.done)
        .bind(checksumOf(head))
        .run();
}

std::int64_t checksumOf(const PartKey& key, const Part& part)
{
    return Checksum()
        .add(key.kind)
        .add(key.tree)
        .add(key.id)
        .add(part.place)
        .add(part.document)
        .value();
}

Parts readParts(Connection& connection, const Head& head)
{
    Statement statement(connection,
                        QStringLiteral("SELECT kind, tree, id, place, document, crc FROM part"));
    statement.run();
    Parts parts;
    std::int64_t sum = 0;
    while (statement.next()) {
        PartKey key = keyAt(statement, 0);
        Part part{statement.number(3), statement.text(4)};
        if (checksumOf(key, part) != statement.number(5))
            throw damaged(key.kind + " " + model::inQuotes(key.id));
        sum += statement.number(5);
        parts.emplace(std::move(key), std::move(part));
    }
    if (sum != head.partsSum)
        throw damaged("the list of its parts");
    return parts;
}

std::int64_t writeParts(Connection& connection, std::int64_t sum, const GardenChange& change)
{
    Statement find(connection, QStringLiteral("SELECT crc FROM part "
                                              "WHERE kind = ? AND tree = ? AND id = ?"));
    Statement remove(connection, QStringLiteral("DELETE FROM part "
                                                "WHERE kind = ? AND tree = ? AND id = ?"));
    Statement write(connection, QStringLiteral("INSERT OR REPLACE INTO part(kind, tree, id, place, "
                                               "document, crc) VALUES(?, ?, ?, ?, ?, ?)"));
    for (const auto& part : change) {
        bind(find, part.key).run();
        const bool wasThere = find.next();
        const auto was = wasThere ? find.number(0) : 0;
        if (wasThere != part.before.has_value() ||
            (wasThere && was != checksumOf(part.key, *part.before)))
            throw StoreError(Kind::changed, "a garden that another program changed",
                             "the one that was opened");
        sum -= was;
        if (!part.after) {
            bind(remove, part.key).run();
            continue;
        }
        const auto crc = checksumOf(part.key, *part.after);
        bind(bind(write, part.key), part.after).bind(crc).run();
        sum += crc;
    }
    return sum;
}

std::vector<Step> readSteps(Connection& connection)
{
    Statement steps(connection,
                    QStringLiteral("SELECT number, name, gesture, crc FROM step ORDER BY number"));
    Statement parts(
        connection,
        QStringLiteral("SELECT kind, tree, id, place_before, before, place_after, after "
                       "FROM step_part WHERE step = ? ORDER BY kind, tree, id"));
    std::vector<Step> read;
    steps.run();
    while (steps.next()) {
        Step step{steps.number(0), steps.text(1), static_cast<int>(steps.number(2)), {}};
        parts.bind(step.number).run();
        while (parts.next())
            step.change.push_back({keyAt(parts, 0), partAt(parts, 3), partAt(parts, 5)});
        if (checksumOf(step) != steps.number(3))
            throw damaged("its history");
        read.push_back(std::move(step));
    }
    return read;
}

void writeStep(Connection& connection, const Step& step)
{
    dropStep(connection, step.number);
    Statement write(connection, QStringLiteral("INSERT INTO step(number, name, gesture, crc) "
                                               "VALUES(?, ?, ?, ?)"));
    write.bind(step.number).bind(step.name).bind(step.gesture).bind(checksumOf(step)).run();
    Statement parts(connection,
                    QStringLiteral("INSERT INTO step_part(step, kind, tree, id, place_before, "
                                   "before, place_after, after) VALUES(?, ?, ?, ?, ?, ?, ?, ?)"));
    for (const auto& part : step.change) {
        bind(parts.bind(step.number), part.key);
        bind(bind(parts, part.before), part.after).run();
    }
}

void dropStep(Connection& connection, std::int64_t number)
{
    Statement statement(connection, QStringLiteral("DELETE FROM step WHERE number = ?"));
    statement.bind(number).run();
}

} // namespace app
