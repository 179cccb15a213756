#pragma once

#include "model/garden/garden.hpp"

#include <QUndoCommand>

#include <functional>
#include <memory>

namespace app {

/// The garden as it stood at one moment. Nobody changes it; an edit makes another.
using GardenSnapshot = std::shared_ptr<const model::Garden>;

/// One step of history: the garden before and the garden after.
class Edit final : public QUndoCommand {
public:
    using Show = std::function<void(const GardenSnapshot&)>;

    /// \param gesture  steps with the same number other than 0 become one: a drag undoes at once
    Edit(const QString& name, GardenSnapshot before, GardenSnapshot after, int gesture, Show show);

    void undo() override;
    void redo() override; ///< QUndoStack::push() calls it once
    [[nodiscard]] int id() const override;
    bool mergeWith(const QUndoCommand* later) override;

private:
    GardenSnapshot before_;
    GardenSnapshot after_;
    int gesture_;
    Show show_;
};

} // namespace app
