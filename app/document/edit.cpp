#include "app/document/edit.hpp"

namespace app {

Edit::Edit(const QString& name, GardenSnapshot before, GardenSnapshot after, int gesture, Show show)
    : QUndoCommand(name), before_(std::move(before)), after_(std::move(after)), gesture_(gesture),
      show_(std::move(show))
{
}

void Edit::undo()
{
    show_(before_);
}

void Edit::redo()
{
    show_(after_);
}

int Edit::id() const
{
    return gesture_ == 0 ? -1 : gesture_;
}

bool Edit::mergeWith(const QUndoCommand* later)
{
    const auto* next = dynamic_cast<const Edit*>(later);
    if (!next || next->gesture_ != gesture_)
        return false;
    after_ = next->after_;
    setText(next->text());
    setObsolete(*before_ == *after_);
    return true;
}

} // namespace app
