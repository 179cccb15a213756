#pragma once

#include "app/view/side_view_model.hpp"

#include <QImage>
#include <QObject>
#include <QStringList>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

#include <optional>

namespace app {

/// The photo under the side view: laid there, moved, turned, scaled and set upright, so that a tree
/// can be drawn over it. It belongs to one bearing and is seen from thereabouts only. Every change
/// is a named step of history.
class UnderlayViewModel final : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("handed to the window")
    Q_PROPERTY(bool isThere READ isThere NOTIFY changed FINAL)
    Q_PROPERTY(QString elsewhere READ elsewhere NOTIFY changed FINAL)
    Q_PROPERTY(QStringList nameFilters READ nameFilters CONSTANT FINAL)
    Q_PROPERTY(app::UnderlayViewModel::Tool tool READ tool WRITE setTool NOTIFY changed FINAL)
    Q_PROPERTY(QString hint READ hint NOTIFY changed FINAL)
    Q_PROPERTY(bool wantsLength READ wantsLength NOTIFY changed FINAL)
    Q_PROPERTY(QString lengthExample READ lengthExample NOTIFY changed FINAL)
    Q_PROPERTY(double opacity READ opacity NOTIFY changed FINAL)
    Q_PROPERTY(QString opacityText READ opacityText NOTIFY changed FINAL)
    Q_PROPERTY(double turned READ turned NOTIFY changed FINAL)
    Q_PROPERTY(QString turnedText READ turnedText NOTIFY changed FINAL)
    Q_PROPERTY(QString tiltText READ tiltText NOTIFY changed FINAL)

public:
    /// What a press on the drawing does to the photo.
    enum Tool {
        None,    ///< nothing
        Move,    ///< drags it
        Length,  ///< marks the two ends of a known length
        Upright, ///< marks two points of an edge that is upright in truth
    };
    Q_ENUM(Tool)

    UnderlayViewModel(Workspace& workspace, SideViewModel& side, QObject* parent = nullptr);

    /// A photo lies under the drawing as it is looked at now.
    [[nodiscard]] bool isThere() const { return current().has_value(); }
    /// Where else a photo lies under it, in words; empty: nowhere.
    [[nodiscard]] QString elsewhere() const;
    [[nodiscard]] QStringList nameFilters() const; ///< of a dialog that chooses a picture
    [[nodiscard]] Tool tool() const { return isThere() ? tool_ : None; }
    void setTool(Tool tool);
    [[nodiscard]] QString hint() const; ///< what to do next
    [[nodiscard]] bool wantsLength() const { return tool() == Length && points_.size() == 2; }
    [[nodiscard]] QString lengthExample() const;
    [[nodiscard]] double opacity() const; ///< 0 .. 1
    [[nodiscard]] QString opacityText() const;
    [[nodiscard]] double turned() const; ///< degrees clockwise, -180 .. 180
    [[nodiscard]] QString turnedText() const;
    [[nodiscard]] QString tiltText() const; ///< how far the camera looked up; empty: level

    /// Lays a picture under the drawing, as it is looked at now, in place of one that lies there.
    Q_INVOKABLE bool lay(const QUrl& file);
    /// It stays among the tree's photos.
    Q_INVOKABLE void takeAway();
    /// Looks the way that a photo was taken.
    Q_INVOKABLE void lookThatWay();
    /// A press, a drag and a release on the drawing, in its pixels.
    Q_INVOKABLE void press(double x, double y);
    Q_INVOKABLE void dragTo(double x, double y);
    Q_INVOKABLE void release();
    /// Moves it by pixels, for the keyboard.
    Q_INVOKABLE void nudge(double right, double down);
    /// \param typed  what lies between the two points that were pressed
    Q_INVOKABLE bool setLength(const QString& typed);
    /// A run of one of these is one step.
    Q_INVOKABLE void setOpacity(double opacity);
    Q_INVOKABLE void setTurned(double degrees);

    /// What the side view draws beneath everything; null image: nothing.
    [[nodiscard]] SceneUnderlay underlay();

signals:
    void changed();

private:
    /// Index of the shown photo in Tree::photos.
    [[nodiscard]] std::optional<std::size_t> current() const;
    [[nodiscard]] const model::Photo* photo() const;
    void load();
    [[nodiscard]] QPointF toPicture(QPointF canvas) const;
    void setUpright();
    void change(const QString& name, const model::Photo& photo, int gesture = 0);
    /// The number of a run of changes that are one step as long as `what` stays the same.
    [[nodiscard]] int runOf(const char* what);

    Workspace& workspace_;
    SideViewModel& side_;
    Tool tool_{None};
    std::vector<QPointF> points_; ///< pressed, in the picture's pixels
    std::optional<QPointF> held_; ///< where the hand was last
    const char* run_{};
    int gesture_{};
    std::string loaded_; ///< name of the photo that image_ is of
    QImage image_;       ///< upright by its EXIF, as small as is enough for a screen
    QSizeF picture_;     ///< size of the whole
};

} // namespace app
