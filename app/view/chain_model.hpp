#pragma once

#include "app/words/chain.hpp"

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace app {

/// The parts and steps of a chain, one under the other.
class ChainModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to a view-model")

public:
    /// A row is a heading, a remark, or a step with its value and origin: the others are empty.
    enum Role { Heading = Qt::UserRole + 1, Remark, Name, Value, Origin };

    using QAbstractListModel::QAbstractListModel;

    void show(const std::vector<ChainPart>& parts);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

private:
    struct Row {
        QString heading;
        QString remark;
        ChainStep step;
    };
    std::vector<Row> rows_;
};

} // namespace app
