#pragma once

#include "app/round/round_tint.hpp"
#include "app/view/solid.hpp"

#include <QAbstractListModel>

namespace app {

/// What is drawn in three dimensions, one row for each part. A row keeps its solid while that
/// stays the same, so that only what changed is sent to be drawn anew.
class RoundPartModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to a view-model")

public:
    enum Role { Shape = Qt::UserRole + 1, Colour, CastsShadow, TakesShadow, OnlyShadow, PartId };

    using QAbstractListModel::QAbstractListModel;

    /// \param looks  one for each part
    void show(std::vector<RoundPart> parts, std::vector<RoundLook> looks);
    /// The same parts seen otherwise.
    void paint(std::vector<RoundLook> looks);
    [[nodiscard]] const std::vector<RoundPart>& parts() const { return parts_; }
    [[nodiscard]] const std::vector<RoundLook>& looks() const { return looks_; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

private:
    std::vector<RoundPart> parts_;
    std::vector<RoundLook> looks_;
};

} // namespace app
