#include "app/view/round_part_model.hpp"

#include <algorithm>
#include <utility>

namespace app {

void RoundPartModel::show(std::vector<RoundPart> parts, std::vector<RoundLook> looks)
{
    const bool sameRows = std::ranges::equal(parts, parts_, [](const auto& a, const auto& b) {
        return a.kind == b.kind && a.id == b.id;
    });
    if (!sameRows) {
        beginResetModel();
        parts_ = std::move(parts);
        looks_ = std::move(looks);
        endResetModel();
        return;
    }
    for (std::size_t row = 0; row < parts_.size(); ++row) {
        if (parts[row] == parts_[row])
            continue;
        parts_[row] = std::move(parts[row]);
        const auto changed = index(static_cast<int>(row));
        emit dataChanged(changed, changed, {Shape});
    }
    paint(std::move(looks));
}

void RoundPartModel::paint(std::vector<RoundLook> looks)
{
    looks_.swap(looks);
    for (std::size_t row = 0; row < looks_.size(); ++row)
        if (looks_[row] != looks[row]) {
            const auto changed = index(static_cast<int>(row));
            emit dataChanged(changed, changed, {Colour, CastsShadow, TakesShadow, OnlyShadow});
        }
}

int RoundPartModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(parts_.size());
}

QVariant RoundPartModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const auto row = static_cast<std::size_t>(index.row());
    switch (role) {
    case Shape:
        return QVariant::fromValue(Solid{parts_[row].solid});
    case Colour:
        return looks_[row].colour;
    case CastsShadow:
        return looks_[row].castsShadow;
    case TakesShadow:
        return looks_[row].takesShadow;
    case OnlyShadow:
        return looks_[row].onlyShadow;
    case PartId:
        return QString::fromStdString(parts_[row].id);
    default:
        return {};
    }
}

QHash<int, QByteArray> RoundPartModel::roleNames() const
{
    return {{Shape, "shape"},
            {Colour, "colour"},
            {CastsShadow, "castsShadow"},
            {TakesShadow, "takesShadow"},
            {OnlyShadow, "onlyShadow"},
            {PartId, "partId"}};
}

} // namespace app
