#pragma once

#include <QBuffer>
#include <QImage>

namespace app::test {

/// A JPEG, blue with its top left quarter red, as a camera writes it that was held so.
/// \param orientation  1 .. 8, EXIF 2.32 (CIPA DC-008), tag 0x0112
inline QByteArray jpeg(int width_px, int height_px, int orientation = 1)
{
    QImage image(width_px, height_px, QImage::Format_RGB32);
    image.fill(Qt::blue);
    for (int y = 0; y < height_px / 2; ++y)
        for (int x = 0; x < width_px / 2; ++x)
            image.setPixel(x, y, 0xffff0000);
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "JPEG", 95);
    // APP1: "Exif", a big-endian TIFF head, one directory of one short.
    QByteArray exif = QByteArray::fromHex("ffe10022457869660000"
                                          "4d4d002a00000008"
                                          "000101120003000000010000000000000000");
    exif[exif.size() - 7] = static_cast<char>(orientation);
    return bytes.insert(2, exif);
}

} // namespace app::test
