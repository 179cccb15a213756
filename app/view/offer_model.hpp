#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace app {

/// One point of the curve of leaf against what it buys.
struct OfferPoint {
    double along{};  ///< 0 .. 1 of the leaf that may go
    double up{};     ///< 0 .. 1 of the scale of what is bought; the better the higher
    QString leaf;    ///< "9 %"
    QString reached; ///< "2.31 m"
    QString sentence;
    bool taken{};  ///< its cuts are being tried out
    bool proven{}; ///< no other set of cuts reaches as much for less leaf
    friend bool operator==(const OfferPoint&, const OfferPoint&) = default;
};

/// The points from no leaf to all that may go; the first is the tree as it stands.
class OfferModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to a view-model")

public:
    enum Role { Along = Qt::UserRole + 1, Up, From, Until, Leaf, Reached, Sentence, Taken, Proven };

    using QAbstractListModel::QAbstractListModel;

    void show(std::vector<OfferPoint> points);
    [[nodiscard]] const std::vector<OfferPoint>& points() const { return points_; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

private:
    std::vector<OfferPoint> points_;
};

} // namespace app
