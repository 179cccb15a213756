#include "app/view/strip_model.hpp"

namespace app {

void StripModel::show(std::vector<StripHeights> strips)
{
    beginResetModel();
    strips_ = std::move(strips);
    endResetModel();
}

void StripModel::setBefore(int row, const QString& height)
{
    if (row < 0 || row >= rowCount())
        return;
    strips_[static_cast<std::size_t>(row)].before = height;
    emit dataChanged(index(row), index(row), {Before});
}

void StripModel::setAfter(int row, const QString& height)
{
    if (row < 0 || row >= rowCount())
        return;
    strips_[static_cast<std::size_t>(row)].after = height;
    emit dataChanged(index(row), index(row), {After});
}

int StripModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(strips_.size());
}

QVariant StripModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const auto& strip = strips_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Name:
    case Qt::DisplayRole:
        return strip.name;
    case Drawn:
        return strip.drawn;
    case Before:
        return strip.before;
    case After:
        return strip.after;
    default:
        return {};
    }
}

QHash<int, QByteArray> StripModel::roleNames() const
{
    return {{Name, "name"}, {Drawn, "drawn"}, {Before, "before"}, {After, "after"}};
}

} // namespace app
