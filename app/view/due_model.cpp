#include "app/view/due_model.hpp"

namespace app {

void DueModel::show(std::vector<DueLine> lines)
{
    if (lines == lines_)
        return;
    beginResetModel();
    lines_ = std::move(lines);
    endResetModel();
}

int DueModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(lines_.size());
}

QVariant DueModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const auto& line = lines_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case TreeName:
        return line.treeName;
    case What:
    case Qt::DisplayRole:
        return line.what;
    case When:
        return line.when;
    case Why:
        return line.why;
    case State:
        return line.state;
    case TreeId:
        return line.tree;
    case ToneRole:
        return QVariant::fromValue(line.tone);
    default:
        return {};
    }
}

QHash<int, QByteArray> DueModel::roleNames() const
{
    return {{TreeName, "treeName"}, {What, "what"},     {When, "when"},    {Why, "why"},
            {State, "dueState"},    {TreeId, "treeId"}, {ToneRole, "tone"}};
}

} // namespace app
