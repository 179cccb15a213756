#include "app/view/tick_model.hpp"

namespace app {

void TickModel::show(std::vector<Tick> ticks)
{
    beginResetModel();
    ticks_ = std::move(ticks);
    endResetModel();
    emit ticked();
}

void TickModel::setTick(int row, int state)
{
    if (row < 0 || row >= rowCount() || state < Tick::Left || state > Tick::Changed)
        return;
    ticks_[static_cast<std::size_t>(row)].state = static_cast<Tick::State>(state);
    changed(row);
}

void TickModel::setAmount(int row, const QString& amount)
{
    if (row < 0 || row >= rowCount())
        return;
    ticks_[static_cast<std::size_t>(row)].amount = amount;
    changed(row);
}

void TickModel::tickAll()
{
    for (int row = 0; row < rowCount(); ++row)
        setTick(row, Tick::Done);
}

void TickModel::changed(int row)
{
    emit dataChanged(index(row), index(row));
    emit ticked();
}

int TickModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(ticks_.size());
}

QVariant TickModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const auto& tick = ticks_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Number:
        return index.row() + 1;
    case Instruction:
    case Qt::DisplayRole:
        return tick.instruction;
    case AmountLabel:
        return tick.amountLabel;
    case StateRole:
        return static_cast<int>(tick.state);
    case Amount:
        return tick.amount;
    default:
        return {};
    }
}

QHash<int, QByteArray> TickModel::roleNames() const
{
    return {{Number, "number"},
            {Instruction, "instruction"},
            {AmountLabel, "amountLabel"},
            {StateRole, "tickState"},
            {Amount, "amount"}};
}

} // namespace app
