#pragma once

#include "app/view/tone.hpp"

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace app {

/// One thing that a tree of the garden is due for.
struct DueLine {
    QString treeName;
    QString what;
    QString when;
    QString why;
    QString state; ///< "overdue"
    QString tree;  ///< id
    Tone::Value tone{Tone::Plain};
    friend bool operator==(const DueLine&, const DueLine&) = default;
};

/// What is due in the garden, the most urgent first.
class DueModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to a view-model")

public:
    enum Role { TreeName = Qt::UserRole + 1, What, When, Why, State, TreeId, ToneRole };

    using QAbstractListModel::QAbstractListModel;

    void show(std::vector<DueLine> lines);
    [[nodiscard]] const std::vector<DueLine>& lines() const { return lines_; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

private:
    std::vector<DueLine> lines_;
};

} // namespace app
