#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace app {

/// One cut of the plan, to be ticked on a visit.
struct Tick {
    /// What became of it.
    enum State {
        Left,    ///< not made
        Done,    ///< made as planned
        Changed, ///< made, but otherwise: `amount` says how
    };
    QString instruction; ///< as the plan words it
    QString amountLabel; ///< what can be different: "Cut at, from the union"
    State state{Left};
    QString amount; ///< typed: a length or a share
    friend bool operator==(const Tick&, const Tick&) = default;
};

/// The plan's cuts in working order, as numbered on the drawing. Its rows are written by the page.
class TickModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to a form")

public:
    enum Role { Number = Qt::UserRole + 1, Instruction, AmountLabel, StateRole, Amount };

    using QAbstractListModel::QAbstractListModel;

    void show(std::vector<Tick> ticks);
    [[nodiscard]] const std::vector<Tick>& ticks() const { return ticks_; }

    /// \param state  0 left, 1 done, 2 changed
    Q_INVOKABLE void setTick(int row, int state);
    Q_INVOKABLE void setAmount(int row, const QString& amount);
    Q_INVOKABLE void tickAll();

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

signals:
    void ticked();

private:
    void changed(int row);

    std::vector<Tick> ticks_;
};

} // namespace app
