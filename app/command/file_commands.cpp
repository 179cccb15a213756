#include "app/command/commands.hpp"
#include "app/document/change_garden_file.hpp"
#include "app/document/file_sentences.hpp"
#include "app/report/json_text.hpp"
#include "app/store/recover_garden.hpp"
#include "app/words/wording.hpp"

#include <QFileInfo>

namespace app {
namespace {

QString fileOf(const std::string& argument)
{
    return QString::fromStdString(argument);
}

Json listOf(const std::vector<std::string>& texts)
{
    Json list = Json::array();
    for (const auto& text : texts)
        list.push_back(text);
    return list;
}

int writeTransfer(const Job& job, const Transfer& transfer)
{
    if (!transfer.problem.isEmpty())
        throw Refusal(transfer.problem.toStdString());
    const auto& [from, to] = std::pair(job.arguments.garden, job.arguments.to);
    if (job.arguments.json) {
        job.streams.out << jsonText(Json{{"format", "underbough-transfer"},
                                         {"version", 1},
                                         {"from", from},
                                         {"to", to},
                                         {"photos", transfer.photos},
                                         {"missing_photos", listOf(transfer.missing)}});
        return kFine;
    }
    job.streams.out << to << ": "
                    << Words::tr("written. Photos: %1.").arg(transfer.photos).toStdString() << '\n';
    for (const auto& name : transfer.missing)
        job.streams.out << to << ": "
                        << Words::tr("%1: a photo that could not be found; the garden still names "
                                     "it")
                               .arg(QString::fromStdString(model::inQuotes(name)))
                               .toStdString()
                        << '\n';
    return kFine;
}

} // namespace

int exportCommand(const Job& job)
{
    if (fileOf(job.arguments.to).endsWith(QLatin1String(".underbough"), Qt::CaseInsensitive))
        throw Refusal(job.arguments.to + ": " +
                      Words::tr("found the ending of a garden file, but export writes JSON: name "
                                "it .json, or make a garden file with import")
                          .toStdString());
    return writeTransfer(
        job, exportGarden(fileOf(job.arguments.garden), fileOf(job.arguments.to), job.tables));
}

int importCommand(const Job& job)
{
    return writeTransfer(
        job, importGarden(fileOf(job.arguments.garden), fileOf(job.arguments.to), job.tables));
}

int recoverCommand(const Job& job)
{
    const auto& [from, to] = std::pair(job.arguments.garden, job.arguments.to);
    if (QFileInfo::exists(fileOf(to)))
        throw Refusal(
            to + ": " +
            Words::tr("is there already and was left alone; choose another name").toStdString());
    Recovery recovery;
    try {
        recovery = recoverGarden(fileOf(from), fileOf(to));
    } catch (const StoreError& error) {
        throw Refusal(refusalLine(from, error.faults()));
    }
    if (job.arguments.json)
        job.streams.out << jsonText(Json{{"format", "underbough-recovery"},
                                         {"version", 1},
                                         {"to", to},
                                         {"trees", recovery.trees},
                                         {"limbs", recovery.limbs},
                                         {"visits", recovery.visits},
                                         {"things", recovery.things},
                                         {"photos", recovery.photos},
                                         {"doubtful", recovery.doubtful},
                                         {"lost", listOf(recovery.lost)}});
    else
        job.streams.out << to << ": "
                        << Words::tr("written with what could be read; %1.")
                               .arg(recoverySummary(recovery))
                               .toStdString()
                        << '\n';
    return kFine;
}

} // namespace app
