#include "app/report/diary_json.hpp"

#include "app/report/growth_json.hpp"
#include "app/report/suggestion_json.hpp"
#include "app/words/diary_words.hpp"
#include "model/document/words.hpp"

namespace app {
namespace {

using model::diary::DueKind;
using model::diary::DueState;

std::string plainText(QString text)
{
    return text.replace(QChar::Nbsp, QLatin1Char(' ')).toStdString();
}

Json cutsJson(const std::vector<model::Cut>& cuts)
{
    Json list = Json::array();
    for (const auto& cut : cuts)
        list.push_back({{"kind", model::word(cut.kind)},
                        {"limb", cut.limb},
                        {"at_m", number(cut.at_m)},
                        {"height_m", number(cut.height_m)},
                        {"share", number(cut.share)}});
    return list;
}

Json visitJson(const model::Visit& visit, const Wording& wording)
{
    Json headroom = Json::array();
    for (const auto& record : visit.headroom)
        headroom.push_back({{"strip", record.strip},
                            {"before_m", number(record.before_m)},
                            {"after_m", number(record.after_m)}});
    Json lines = Json::array();
    for (const auto& line : visitLines(visit, wording) + photoLines(visit))
        lines.push_back(plainText(line));
    Json photos = Json::array();
    for (const auto& photo : visit.photos)
        photos.push_back({{"file", photo.file}, {"note", photo.note}});
    return {{"id", visit.id},
            {"date", isoDate(visit.date)},
            {"by", visit.by},
            {"cuts", cutsJson(visit.cuts)},
            {"left", cutsJson(visit.left)},
            {"leaf_share", number(visit.leafShare)},
            {"headroom", std::move(headroom)},
            {"photos", std::move(photos)},
            {"next_due", dateOrNull(visit.nextDue)},
            {"sentences", std::move(lines)}};
}

Json seasonJson(const model::diary::SeasonLeaf& season)
{
    return {{"year", season.season.year},
            {"from", isoDate(season.season.from)},
            {"to", isoDate(season.season.to)},
            {"taken_share", number(season.taken)},
            {"guideline_share", number(season.guideline)},
            {"left_share", number(season.left())},
            {"visits_not_noted", season.unknown}};
}

Json grownJson(const model::growth::MeasuredGrowth& grown, const Wording& wording)
{
    return {{"at", grown.at == model::growth::MeasuredAt::tip ? "tip" : "strip"},
            {"subject", grown.subject},
            {"from", isoDate(grown.from)},
            {"to", isoDate(grown.to)},
            {"growth_years", number(grown.years)},
            {"moved_m", number(grown.moved_m)},
            {"sentence", plainText(sentence(grown, wording))}};
}

Json woundJson(const model::diary::WoundState& state, const Wording& wording)
{
    return {{"visit", state.visit},
            {"made", isoDate(state.made)},
            {"limb", state.wound.limb},
            {"limb_is_there", state.limbIsThere},
            {"at_m", number(state.wound.at_m)},
            {"diameter_m", number(state.wound.diameter_m)},
            {"closed", dateOrNull(state.wound.closed)},
            {"open_m", number(state.open_m)},
            {"closed_if_fast", dateOrNull(state.closes.early)},
            {"closed_expected", dateOrNull(state.closes.middle)},
            {"closed_if_slow", dateOrNull(state.closes.late)},
            {"lingers", state.lingers},
            {"sentence", plainText(sentence(state, wording))}};
}

template <typename Items, typename Write>
Json listJson(const Items& items, Write write)
{
    Json list = Json::array();
    for (const auto& item : items)
        list.push_back(write(item));
    return list;
}

} // namespace

const char* jsonName(DueKind kind)
{
    switch (kind) {
    case DueKind::headroom:
        return "headroom";
    case DueKind::window:
        return "window";
    case DueKind::storm:
        return "storm";
    case DueKind::written:
        return "written";
    }
    return "";
}

const char* jsonName(DueState state)
{
    switch (state) {
    case DueState::overdue:
        return "overdue";
    case DueState::now:
        return "now";
    case DueState::later:
        return "later";
    }
    return "";
}

Json toJson(const model::diary::Due& due, const Wording& wording)
{
    return {{"tree", due.tree},
            {"kind", jsonName(due.kind)},
            {"subject", due.subject},
            {"state", jsonName(due.state)},
            {"from", isoDate(due.from)},
            {"to", dateOrNull(due.to)},
            {"lost_p50", dateOrNull(due.middle)},
            {"height_m", number(due.height_m)},
            {"needed_m", number(due.needed_m)},
            {"measured", due.measured},
            {"cuts", due.cuts},
            {"what", plainText(dueWhat(due, wording))},
            {"why", plainText(dueWhy(due, wording))}};
}

Json toJson(const model::diary::TreeDiary& diary, const Wording& wording)
{
    return {
        {"id", wording.tree.id},
        {"name", wording.tree.name},
        {"species", wording.tree.species},
        {"visits", listJson(model::growth::visitsByDate(wording.tree),
                            [&](const auto* visit) { return visitJson(*visit, wording); })},
        {"seasons", listJson(diary.seasons, seasonJson)},
        {"allowance_share", number(diary.allowance.share)},
        {"growth", listJson(diary.growth, [&](const auto& g) { return grownJson(g, wording); })},
        {"shoots", toJson(diary.shoots)},
        {"wounds", listJson(diary.wounds, [&](const auto& w) { return woundJson(w, wording); })},
        {"due", listJson(diary.due, [&](const auto& due) { return toJson(due, wording); })},
    };
}

} // namespace app
