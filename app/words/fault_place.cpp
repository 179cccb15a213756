#include "app/words/fault_place.hpp"

#include "app/words/fault_words.hpp"
#include "app/words/wording.hpp"
#include "model/document/garden_json.hpp"
#include "model/escaped.hpp"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace app {
namespace {

/// What a thing of the document is called; empty where it is no thing with a name.
QString calledIn(const QJsonValue& thing)
{
    QString name = thing[QLatin1String("name")].toString();
    if (name.isEmpty())
        name = thing[QLatin1String("id")].toString();
    if (name.isEmpty())
        return {};
    return Words::tr("“%1”").arg(QString::fromStdString(model::escaped(name.toStdString())));
}

} // namespace

QString faultPlace(const std::string& pointer, const QByteArray& document)
{
    QString place;
    QJsonValue here = QJsonDocument::fromJson(document).object();
    for (const auto& step : QString::fromStdString(pointer).split(QLatin1Char('/')).mid(1)) {
        bool isIndex = false;
        const int index = step.toInt(&isIndex);
        if (!here.isArray() || !isIndex) { // names of fields hold neither '~' nor '/'
            here = here[step];
            continue;
        }
        here = here[index];
        const QString name = calledIn(here);
        if (!name.isEmpty())
            place = place.isEmpty() ? name : Words::tr("%1 of %2").arg(name, place);
    }
    return place;
}

QString placedFaultLine(const model::Fault& fault, const QByteArray& document)
{
    const QString place = faultPlace(fault.pointer, document);
    if (place.isEmpty())
        return faultLine(fault);
    return Words::tr("%1 (%2): found %3, expected %4")
        .arg(place, QString::fromStdString(model::escaped(fault.pointer)), faultWords(fault.found),
             faultWords(fault.expected));
}

QString refusedDrawing(const model::Fault& fault, const model::Garden& after)
{
    const QString needed = faultWords(fault.expected);
    const QString place =
        faultPlace(fault.pointer, QByteArray::fromStdString(model::writeGarden(after)));
    if (place.isEmpty())
        return Words::tr("That can't be drawn: it needs %1.").arg(needed);
    return Words::tr("%1 can't be drawn like that: it needs %2.").arg(place, needed);
}

} // namespace app
