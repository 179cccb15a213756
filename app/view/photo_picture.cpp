#include "app/view/photo_picture.hpp"

#include <QPainter>

namespace app {

void PhotoPicture::setPhotos(PhotosViewModel* photos)
{
    if (photos == photos_)
        return;
    photos_ = photos;
    show();
}

void PhotoPicture::setFile(const QString& file)
{
    if (file == file_)
        return;
    file_ = file;
    show();
}

void PhotoPicture::setLarge(bool large)
{
    if (large == large_)
        return;
    large_ = large;
    show();
}

void PhotoPicture::show()
{
    emit pictureChanged();
    update();
}

void PhotoPicture::draw(QPainter& painter, const DrawingPalette& colours)
{
    const QRectF whole(0.0, 0.0, width(), height());
    painter.fillRect(whole, colours.paper);
    if (!photos_ || file_.isEmpty())
        return;
    const QImage image = large_ ? photos_->large(file_) : photos_->small(file_);
    if (image.isNull()) {
        painter.setPen(colours.ink);
        painter.drawText(whole.adjusted(6.0, 6.0, -6.0, -6.0), Qt::AlignCenter | Qt::TextWordWrap,
                         tr("This photo can't be found."));
        return;
    }
    const QSizeF size = QSizeF(image.size()).scaled(whole.size(), Qt::KeepAspectRatio);
    QRectF at(QPointF(), size);
    at.moveCenter(whole.center());
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.drawImage(at, image);
}

} // namespace app
