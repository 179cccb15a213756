#include "app/store/picture.hpp"

#include <QBuffer>
#include <QImageReader>

#include <algorithm>

namespace app {
namespace {

/// A reader over bytes that outlive it.
class Reading {
public:
    explicit Reading(const QByteArray& bytes)
    {
        buffer_.setData(bytes);
        buffer_.open(QIODevice::ReadOnly);
        reader_.setDevice(&buffer_);
        reader_.setAutoTransform(true);
    }
    QImageReader& reader() { return reader_; }

private:
    QBuffer buffer_;
    QImageReader reader_;
};

} // namespace

QImage pictureOf(const QByteArray& bytes, int longest_px)
{
    Reading reading(bytes);
    const QSize whole = reading.reader().size();
    if (std::max(whole.width(), whole.height()) > longest_px) // before turning: the box is square
        reading.reader().setScaledSize(
            whole.scaled(longest_px, longest_px, Qt::KeepAspectRatio).expandedTo(QSize(1, 1)));
    return reading.reader().read();
}

QSize pictureSize_px(const QByteArray& bytes)
{
    Reading reading(bytes);
    const QSize size = reading.reader().size();
    const bool onItsSide =
        reading.reader().transformation().testFlag(QImageIOHandler::TransformationRotate90);
    return size.isValid() && onItsSide ? size.transposed() : size;
}

QByteArray pictureFormat(const QByteArray& bytes)
{
    Reading reading(bytes);
    return reading.reader().canRead() ? reading.reader().format() : QByteArray();
}

} // namespace app
