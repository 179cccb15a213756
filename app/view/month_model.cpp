#include "app/view/month_model.hpp"

namespace app {

void MonthModel::show(std::vector<MonthBar> months)
{
    if (months == months_)
        return;
    beginResetModel();
    months_ = std::move(months);
    endResetModel();
}

int MonthModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(months_.size());
}

QVariant MonthModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const auto& month = months_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Letter:
    case Qt::DisplayRole:
        return month.letter;
    case Sentence:
        return month.sentence;
    case Here:
        return month.here;
    case Open:
        return month.open;
    case Growing:
        return month.growing;
    case ToneRole:
        return QVariant::fromValue(month.tone);
    case Why:
        return month.why;
    default:
        return {};
    }
}

QHash<int, QByteArray> MonthModel::roleNames() const
{
    return {{Letter, "letter"},   {Sentence, "sentence"}, {Here, "here"}, {Open, "open"},
            {Growing, "growing"}, {ToneRole, "tone"},     {Why, "why"}};
}

} // namespace app
