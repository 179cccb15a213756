#pragma once

#include "app/view/drawings.hpp"
#include "app/view/photos_view_model.hpp"

namespace app {

/// A photo of the garden, whole, as large as it fits.
class PhotoPicture : public app::Drawing {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(app::PhotosViewModel* photos READ photos WRITE setPhotos NOTIFY pictureChanged
                   REQUIRED FINAL)
    Q_PROPERTY(QString file READ file WRITE setFile NOTIFY pictureChanged REQUIRED FINAL)
    Q_PROPERTY(bool large READ large WRITE setLarge NOTIFY pictureChanged FINAL)

public:
    using Drawing::Drawing;

    [[nodiscard]] PhotosViewModel* photos() const { return photos_; }
    void setPhotos(PhotosViewModel* photos);
    [[nodiscard]] const QString& file() const { return file_; }
    void setFile(const QString& file);
    [[nodiscard]] bool large() const { return large_; } ///< in full, not just at a glance
    void setLarge(bool large);

signals:
    void pictureChanged();

protected:
    void draw(QPainter& painter, const DrawingPalette& colours) override;

private:
    void show();

    PhotosViewModel* photos_{};
    QString file_;
    bool large_{};
};

} // namespace app
