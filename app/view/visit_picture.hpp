#pragma once

#include "app/view/diary_view_model.hpp"
#include "app/view/drawings.hpp"

namespace app {

/// A tree as it was drawn before or after a visit, small.
class VisitPicture : public app::Drawing {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(
        app::DiaryViewModel* diary READ diary WRITE setDiary NOTIFY pictureChanged REQUIRED FINAL)
    Q_PROPERTY(int row READ row WRITE setRow NOTIFY pictureChanged REQUIRED FINAL)
    Q_PROPERTY(bool after READ after WRITE setAfter NOTIFY pictureChanged FINAL)

public:
    using Drawing::Drawing;

    [[nodiscard]] DiaryViewModel* diary() const { return diary_; }
    void setDiary(DiaryViewModel* diary);
    [[nodiscard]] int row() const { return row_; } ///< of the diary's visits
    void setRow(int row);
    [[nodiscard]] bool after() const { return after_; }
    void setAfter(bool after);

signals:
    void pictureChanged();

protected:
    void draw(QPainter& painter, const DrawingPalette& colours) override;

private:
    void show();

    DiaryViewModel* diary_{};
    int row_{-1};
    bool after_{};
};

} // namespace app
