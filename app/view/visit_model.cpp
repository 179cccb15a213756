#include "app/view/visit_model.hpp"

namespace app {

void VisitModel::show(std::vector<VisitLine> lines)
{
    if (lines == lines_)
        return;
    beginResetModel();
    lines_ = std::move(lines);
    endResetModel();
}

int VisitModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(lines_.size());
}

QVariant VisitModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const auto& line = lines_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Title:
    case Qt::DisplayRole:
        return line.title;
    case Lines:
        return line.lines;
    case Told:
        return line.lines.join(QLatin1Char(' '));
    case HasPictures:
        return line.hasPictures;
    case Visit:
        return line.visit;
    case PhotoFiles:
        return line.photoFiles;
    case PhotoNotes:
        return line.photoNotes;
    default:
        return {};
    }
}

QHash<int, QByteArray> VisitModel::roleNames() const
{
    return {{Title, "title"},
            {Lines, "lines"},
            {Told, "told"},
            {HasPictures, "hasPictures"},
            {Visit, "visit"},
            {PhotoFiles, "photoFiles"},
            {PhotoNotes, "photoNotes"}};
}

} // namespace app
