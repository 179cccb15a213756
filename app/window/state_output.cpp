#include "app/window/state_output.hpp"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QQuickItem>
#include <QSaveFile>

namespace app {
namespace {

constexpr int kEvery_ms = 100;

void addText(QJsonObject& shown, const QQuickItem& item)
{
    for (const char* property : {"text", "displayText", "question", "headline", "subject", "figure",
                                 "after", "instruction"}) {
        const auto value = item.property(property);
        if (value.typeId() == QMetaType::QString && !value.toString().isEmpty())
            shown.insert(QLatin1String(property), value.toString());
    }
}

void addItems(const QQuickItem& item, QJsonArray& items)
{
    if (!item.isVisible())
        return;
    const bool isFact =
        item.property("subject").isValid() || item.property("instruction").isValid();
    if (!item.objectName().isEmpty() || isFact) {
        const auto corner = item.mapToScene(QPointF(0.0, 0.0));
        QJsonObject shown{{QStringLiteral("name"), item.objectName()},
                          {QStringLiteral("x"), corner.x()},
                          {QStringLiteral("y"), corner.y()},
                          {QStringLiteral("width"), item.width()},
                          {QStringLiteral("height"), item.height()},
                          {QStringLiteral("enabled"), item.isEnabled()},
                          {QStringLiteral("focus"), item.hasActiveFocus()}};
        addText(shown, item);
        items.append(shown);
    }
    for (const auto* child : item.childItems())
        addItems(*child, items);
}

} // namespace

StateOutput::StateOutput(QQuickWindow& window, QString file, QObject* parent)
    : QObject(parent), window_(window), file_(std::move(file))
{
    connect(&timer_, &QTimer::timeout, this, &StateOutput::write);
    timer_.start(kEvery_ms);
}

void StateOutput::write()
{
    QJsonArray items;
    addItems(*window_.contentItem(), items);
    const auto state = QJsonDocument(QJsonObject{{QStringLiteral("title"), window_.title()},
                                                 {QStringLiteral("items"), items}})
                           .toJson();
    QSaveFile file(file_);
    if (state == last_ || !file.open(QIODevice::WriteOnly))
        return;
    file.write(state);
    if (file.commit())
        last_ = state;
}

} // namespace app
