#include "app/document/edit.hpp"

namespace app {

Edit::Edit(Step step, Origin origin, Apply apply)
    : QUndoCommand(QString::fromStdString(step.name)), step_(std::move(step)), origin_(origin),
      apply_(std::move(apply))
{
}

void Edit::undo()
{
    apply_(reversed(step_.change));
}

void Edit::redo()
{
    apply_(step_.change);
}

int Edit::id() const
{
    return origin_ == Origin::file || step_.gesture == 0 ? -1 : step_.gesture;
}

bool Edit::mergeWith(const QUndoCommand* later)
{
    const auto* next = dynamic_cast<const Edit*>(later);
    if (!next || next->id() != id())
        return false;
    step_.change = merged(step_.change, next->step_.change);
    step_.name = next->step_.name;
    setText(next->text());
    setObsolete(step_.change.empty());
    ++revision_;
    return true;
}

} // namespace app
