#pragma once

#include <QAbstractListModel>

#include <algorithm>
#include <utility>
#include <vector>

namespace app {

/// A list model whose rows stay while what they stand for stays, so that an item of the window
/// keeps the keyboard's focus while its row says something new.
/// \tparam Row  with ==, and sameThing(other): whether both stand for the same
template <typename Row>
class SteadyRows : public QAbstractListModel {
public:
    using QAbstractListModel::QAbstractListModel;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override
    {
        return parent.isValid() ? 0 : static_cast<int>(rows_.size());
    }

protected:
    void showRows(std::vector<Row> next)
    {
        if (!std::ranges::equal(next, rows_, &Row::sameThing)) {
            beginResetModel();
            rows_ = std::move(next);
            endResetModel();
            return;
        }
        rows_.swap(next);
        for (std::size_t row = 0; row < rows_.size(); ++row)
            if (rows_[row] != next[row])
                emit dataChanged(index(static_cast<int>(row)), index(static_cast<int>(row)));
    }

    /// Null: no such row.
    [[nodiscard]] const Row* rowAt(const QModelIndex& index) const
    {
        return checkIndex(index, CheckIndexOption::IndexIsValid)
                   ? &rows_[static_cast<std::size_t>(index.row())]
                   : nullptr;
    }

private:
    std::vector<Row> rows_;
};

} // namespace app
