#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include <string>
#include <vector>

namespace app {

/// The headroom over one strip, to be typed on a visit.
struct StripHeights {
    std::string strip; ///< id
    QString name;
    QString drawn;  ///< what the sketch says, to compare with
    QString before; ///< typed
    QString after;  ///< typed
};

/// The strips of ground with the heights that were measured over them.
class StripModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to a form")

public:
    enum Role { Name = Qt::UserRole + 1, Drawn, Before, After };

    using QAbstractListModel::QAbstractListModel;

    void show(std::vector<StripHeights> strips);
    [[nodiscard]] const std::vector<StripHeights>& strips() const { return strips_; }

    Q_INVOKABLE void setBefore(int row, const QString& height);
    Q_INVOKABLE void setAfter(int row, const QString& height);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

private:
    std::vector<StripHeights> strips_;
};

} // namespace app
