#pragma once

#include "app/view/tone.hpp"

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace app {

/// One month of sun on a planting, as a bar.
struct MonthBar {
    QString letter;   ///< "J"
    QString sentence; ///< in full
    double here{};    ///< 0 .. 1 of the sunniest month's open sky
    double open{};    ///< the same under the open sky
    bool growing{};   ///< it counts for the plant
    Tone::Value tone{Tone::Plain};
    QString why{}; ///< for WhyViewModel::ask()
    friend bool operator==(const MonthBar&, const MonthBar&) = default;
};

/// Twelve months, or none.
class MonthModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to a view-model")

public:
    enum Role { Letter = Qt::UserRole + 1, Sentence, Here, Open, Growing, ToneRole, Why };

    using QAbstractListModel::QAbstractListModel;

    void show(std::vector<MonthBar> months);
    [[nodiscard]] const std::vector<MonthBar>& months() const { return months_; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

private:
    std::vector<MonthBar> months_;
};

} // namespace app
