#include "app/view/cut_model.hpp"

namespace app {

void CutModel::show(std::vector<CutLine> lines)
{
    if (lines == lines_)
        return;
    beginResetModel();
    lines_ = std::move(lines);
    endResetModel();
}

int CutModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(lines_.size());
}

QVariant CutModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const auto& line = lines_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Number:
        return index.row() + 1;
    case Kind:
        return line.kind;
    case Instruction:
    case Qt::DisplayRole:
        return line.instruction;
    case Measures:
        return line.measures;
    case Who:
        return line.who;
    case Reasons:
        return line.reasons;
    case Notes:
        return line.notes;
    case LimbId:
        return line.limb;
    case ToneRole:
        return QVariant::fromValue(line.tone);
    case Removes:
        return line.removes;
    default:
        return {};
    }
}

QHash<int, QByteArray> CutModel::roleNames() const
{
    return {{Number, "number"},     {Kind, "kind"},     {Instruction, "instruction"},
            {Measures, "measures"}, {Who, "who"},       {Reasons, "reasons"},
            {Notes, "notes"},       {LimbId, "limbId"}, {ToneRole, "tone"},
            {Removes, "removes"}};
}

} // namespace app
