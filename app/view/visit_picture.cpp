#include "app/view/visit_picture.hpp"

#include "app/drawing/thumbnail.hpp"
#include "app/view/hear.hpp"

namespace app {

void VisitPicture::setDiary(DiaryViewModel* diary)
{
    const auto anew = [this] { update(); };
    if (hear(diary_, diary, this, anew, &DiaryViewModel::changed))
        show();
}

void VisitPicture::setRow(int row)
{
    if (row == row_)
        return;
    row_ = row;
    show();
}

void VisitPicture::setAfter(bool after)
{
    if (after == after_)
        return;
    after_ = after;
    show();
}

void VisitPicture::show()
{
    emit pictureChanged();
    update();
}

void VisitPicture::draw(QPainter& painter, const DrawingPalette& colours)
{
    const auto* sketches = diary_ ? diary_->sketchesOf(row_) : nullptr;
    if (sketches)
        paintThumbnail(painter, sketches->before, after_ ? sketches->after : sketches->before,
                       diary_->bearing_deg(), QSizeF(width(), height()), colours);
}

} // namespace app
