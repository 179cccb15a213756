#include "app/paper/csv_table.hpp"

namespace app {
namespace {

QString field(QString text)
{
    const bool plain = !text.contains(QLatin1Char(',')) && !text.contains(QLatin1Char('"')) &&
                       !text.contains(QLatin1Char('\n')) && !text.contains(QLatin1Char('\r'));
    if (plain)
        return text;
    return QLatin1Char('"') + text.replace(QLatin1String("\""), QLatin1String("\"\"")) +
           QLatin1Char('"');
}

} // namespace

QByteArray csvOf(const std::vector<QStringList>& records)
{
    QByteArray csv;
    for (const QStringList& record : records) {
        QStringList fields;
        for (const QString& text : record)
            fields << field(text);
        csv += fields.join(QLatin1Char(',')).toUtf8() + "\r\n";
    }
    return csv;
}

} // namespace app
