#pragma once

#include "app/view/tone.hpp"

#include <QAbstractListModel>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace app {

/// One suggested cut as a person with a saw reads it.
struct CutLine {
    QString kind;        ///< the trade's name
    QString instruction; ///< what to do, where
    QString measures;    ///< wound, piece, weight, share of leaf
    QString who;
    QStringList reasons; ///< why a helper or an arborist
    QStringList notes;   ///< rules it touches
    QString limb;        ///< id
    Tone::Value tone{Tone::Plain};
    bool removes{}; ///< the whole limb goes
    friend bool operator==(const CutLine&, const CutLine&) = default;
};

/// The suggested cuts in working order; row 0 is marked "1" on the drawing.
class CutModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to a view-model")

public:
    enum Role {
        Number = Qt::UserRole + 1,
        Kind,
        Instruction,
        Measures,
        Who,
        Reasons,
        Notes,
        LimbId,
        ToneRole,
        Removes,
    };

    using QAbstractListModel::QAbstractListModel;

    void show(std::vector<CutLine> lines);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

private:
    std::vector<CutLine> lines_;
};

} // namespace app
