#pragma once

#include <QAbstractListModel>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace app {

/// One visit of a tree's timeline.
struct VisitLine {
    QString title; ///< the day, and who came
    QStringList lines;
    QString visit;          ///< its id
    QStringList photoFiles; ///< as the garden calls them
    QStringList photoNotes; ///< the words under each
    bool hasPictures{};     ///< the sketch was changed with it: before and after differ
    friend bool operator==(const VisitLine&, const VisitLine&) = default;
};

/// The visits to one tree, the newest first.
class VisitModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to a view-model")

public:
    enum Role { Title = Qt::UserRole + 1, Lines, Told, HasPictures, Visit, PhotoFiles, PhotoNotes };

    using QAbstractListModel::QAbstractListModel;

    void show(std::vector<VisitLine> lines);
    [[nodiscard]] const std::vector<VisitLine>& lines() const { return lines_; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

private:
    std::vector<VisitLine> lines_;
};

} // namespace app
