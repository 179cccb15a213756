#include "app/view/fact_model.hpp"

namespace app {

void FactModel::show(std::vector<Fact> facts)
{
    if (facts.size() != facts_.size()) {
        beginResetModel();
        facts_ = std::move(facts);
        endResetModel();
        return;
    }
    facts_.swap(facts);
    for (std::size_t row = 0; row < facts_.size(); ++row)
        if (facts_[row] != facts[row])
            emit dataChanged(index(static_cast<int>(row)), index(static_cast<int>(row)));
}

int FactModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(facts_.size());
}

QVariant FactModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const auto& fact = facts_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Subject:
        return fact.subject;
    case Figure:
        return fact.figure;
    case After:
        return fact.after;
    case Sentence:
    case Qt::DisplayRole:
        return fact.sentence;
    case ToneRole:
        return QVariant::fromValue(fact.tone);
    case Id:
        return fact.id;
    case Measure:
        return fact.measure;
    case Why:
        return fact.why;
    default:
        return {};
    }
}

QHash<int, QByteArray> FactModel::roleNames() const
{
    return {{Subject, "subject"}, {Figure, "figure"}, {After, "after"},     {Sentence, "sentence"},
            {ToneRole, "tone"},   {Id, "factId"},     {Measure, "measure"}, {Why, "why"}};
}

} // namespace app
