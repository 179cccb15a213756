#include "app/view/offer_model.hpp"

namespace app {

void OfferModel::show(std::vector<OfferPoint> points)
{
    if (points.size() != points_.size()) {
        beginResetModel();
        points_ = std::move(points);
        endResetModel();
        return;
    }
    if (points == points_)
        return;
    points_ = std::move(points);
    emit dataChanged(index(0), index(static_cast<int>(points_.size()) - 1));
}

int OfferModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(points_.size());
}

QVariant OfferModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const auto row = static_cast<std::size_t>(index.row());
    const auto& point = points_[row];
    switch (role) {
    case Along:
        return point.along;
    case Up:
        return point.up;
    case From: // where the step starts from
        return row > 0 ? points_[row - 1].up : point.up;
    case Until: // what this buys is what may be had until the next begins
        return row + 1 < points_.size() ? points_[row + 1].along : 1.0;
    case Leaf:
        return point.leaf;
    case Reached:
        return point.reached;
    case Sentence:
    case Qt::DisplayRole:
        return point.sentence;
    case Taken:
        return point.taken;
    case Proven:
        return point.proven;
    default:
        return {};
    }
}

QHash<int, QByteArray> OfferModel::roleNames() const
{
    return {{Along, "along"},       {Up, "up"},       {From, "from"},
            {Until, "until"},       {Leaf, "leaf"},   {Reached, "reached"},
            {Sentence, "sentence"}, {Taken, "taken"}, {Proven, "proven"}};
}

} // namespace app
