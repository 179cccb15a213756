#pragma once

#include "app/store/garden_store.hpp"

#include <QUndoCommand>

#include <functional>
#include <memory>

namespace app {

/// The garden as it stood at one moment. Nobody changes it; an edit makes another.
using GardenSnapshot = std::shared_ptr<const model::Garden>;

/// One step of history: what it changed, part by part, so that hundreds of steps take little room
/// here and in the garden's file.
class Edit final : public QUndoCommand {
public:
    using Apply = std::function<void(const GardenChange&)>;
    enum class Origin {
        here, ///< made in this window: a later step of the same drag joins it
        file, ///< read from the garden's file: it stands by itself
    };

    /// \param step  with the same gesture other than 0 two become one: a drag undoes at once
    Edit(Step step, Origin origin, Apply apply);

    void undo() override;
    void redo() override; ///< QUndoStack::push() calls it once
    [[nodiscard]] int id() const override;
    bool mergeWith(const QUndoCommand* later) override;

    [[nodiscard]] const Step& step() const { return step_; }
    /// Rises when a later step joins it.
    [[nodiscard]] int revision() const { return revision_; }

private:
    Step step_;
    Origin origin_;
    int revision_{};
    Apply apply_;
};

} // namespace app
