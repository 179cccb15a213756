#include "app/paper/html_sheets.hpp"

#include "app/paper/figures.hpp"

#include <QBuffer>
#include <QImage>

namespace app {
namespace {

constexpr auto kStyle =
    "body{font:16px/1.45 system-ui,sans-serif;color:#1a1a1a;background:#fff;max-width:52rem;"
    "margin:2rem auto;padding:0 1rem}"
    "h1{font-size:1.8rem;margin:2.5rem 0 .3rem}h2{font-size:1.2rem;margin:1.8rem 0 .5rem;"
    "border-bottom:1px solid #888}"
    "table{border-collapse:collapse;width:100%;margin:.6rem 0 1rem}"
    "th,td{text-align:left;vertical-align:top;padding:.35rem .5rem;border-bottom:1px solid #999}"
    "th{background:#e9e9e9}td{white-space:pre-line}"
    "figure{margin:.8rem 0;flex:1 1 16rem}figure img{width:100%;border:1px solid #888}"
    "figcaption{font-size:.85rem}.row{display:flex;gap:1rem;flex-wrap:wrap}"
    "tr{break-inside:avoid}figure{break-inside:avoid}footer{margin-top:2rem;font-size:.85rem}"
    ".notes div{border-bottom:1px solid #999;height:1.9rem}"
    "@media print{.page{break-before:page}}";

QString escaped(const QString& text)
{
    return text.toHtmlEscaped();
}

QString pictureData(const Figure& figure)
{
    QByteArray png;
    QBuffer buffer(&png);
    buffer.open(QIODevice::WriteOnly);
    picture(figure, 2.0).save(&buffer, "PNG");
    return QStringLiteral("data:image/png;base64,") + QString::fromLatin1(png.toBase64());
}

/// Writes block after block; bullets that follow each other share a list.
class HtmlWriter {
public:
    void add(const Title& title) { put(QStringLiteral("<h1>%1</h1>"), title.text); }
    void add(const Heading& heading) { put(QStringLiteral("<h2>%1</h2>"), heading.text); }
    void add(const Paragraph& paragraph)
    {
        put(paragraph.strong ? QStringLiteral("<p><strong>%1</strong></p>")
                             : QStringLiteral("<p>%1</p>"),
            paragraph.text);
    }
    void add(const Bullet& bullet)
    {
        if (!inList_)
            html_ += QLatin1String("<ul>\n");
        inList_ = true;
        html_ += QStringLiteral("<li>%1</li>\n").arg(escaped(bullet.text));
    }
    void add(const Table& table)
    {
        endList();
        html_ += QLatin1String("<table>");
        if (!table.head.isEmpty())
            row(table.head, QStringLiteral("th"));
        for (const auto& cells : table.rows)
            row(cells, QStringLiteral("td"));
        html_ += QLatin1String("</table>\n");
    }
    void add(const Figures& row)
    {
        endList();
        html_ += QLatin1String("<div class=\"row\">");
        for (const auto& figure : row.figures)
            html_ += QStringLiteral("<figure><img alt=\"%1\" src=\"%2\"><figcaption>%3"
                                    "</figcaption></figure>")
                         .arg(escaped(figure.spoken), pictureData(figure), escaped(figure.caption));
        html_ += QLatin1String("</div>\n");
    }
    void add(const NoteLines& lines)
    {
        endList();
        html_ += QLatin1String("<div class=\"notes\">") +
                 QStringLiteral("<div></div>").repeated(lines.atLeast) + QLatin1String("</div>\n");
    }
    void add(const NewPage&)
    {
        endList();
        html_ += QLatin1String("<div class=\"page\"></div>\n");
    }
    QString finished()
    {
        endList();
        return std::move(html_);
    }

private:
    void put(const QString& form, const QString& text)
    {
        endList();
        html_ += form.arg(escaped(text)) + QLatin1Char('\n');
    }
    void row(const QStringList& cells, const QString& kind)
    {
        html_ += QLatin1String("<tr>");
        for (const QString& cell : cells)
            html_ += QStringLiteral("<%1>%2</%1>").arg(kind, escaped(cell));
        html_ += QLatin1String("</tr>\n");
    }
    void endList()
    {
        if (inList_)
            html_ += QLatin1String("</ul>\n");
        inList_ = false;
    }

    QString html_;
    bool inList_{};
};

} // namespace

QByteArray htmlOf(const Sheet& sheet, const QString& language)
{
    HtmlWriter writer;
    for (const auto& block : sheet.blocks)
        std::visit([&](const auto& each) { writer.add(each); }, block);
    return QStringLiteral("<!DOCTYPE html>\n<html lang=\"%1\">\n<head>\n<meta charset=\"utf-8\">\n"
                          "<meta name=\"viewport\" content=\"width=device-width\">\n"
                          "<title>%2</title>\n<style>%3</style>\n</head>\n<body>\n")
               .arg(language, escaped(sheet.title), QLatin1String(kStyle))
               .toUtf8() +
           writer.finished().toUtf8() + "<footer>" + escaped(sheet.foot).toUtf8() +
           "</footer>\n</body>\n</html>\n";
}

} // namespace app
