#pragma once

#include "app/round/round_camera.hpp"
#include "app/round/round_pick.hpp"
#include "app/view/drawing_colours.hpp"
#include "app/view/round_part_model.hpp"
#include "app/view/side_view_model.hpp"

#include <QStringList>
#include <QTimer>
#include <QVector3D>

namespace app {

/// The chosen tree and its garden in three dimensions: what stands there, from where the gardener
/// looks, and where the sun is. The gardener stands where the side view has them stand, the limb
/// chosen is the workspace's. Nothing is reckoned while nobody looks.
///
/// What is handed to the scene is in its frame: x east, y up, z south, metres; turns in degrees
/// about its axes, as Qt Quick 3D has them.
class RoundViewModel final : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("handed to the page by the window")
    Q_PROPERTY(app::RoundPartModel* parts READ parts CONSTANT FINAL)
    Q_PROPERTY(
        app::DrawingColours* colours READ colours WRITE setColours NOTIFY coloursChanged FINAL)
    Q_PROPERTY(bool isShown READ isShown WRITE setShown NOTIFY shownChanged FINAL)
    Q_PROPERTY(bool showsFalling READ showsFalling WRITE setShowsFalling NOTIFY sceneChanged FINAL)
    Q_PROPERTY(bool hasFalling READ hasFalling NOTIFY sceneChanged FINAL)
    Q_PROPERTY(QString summary READ summary NOTIFY sceneChanged FINAL)
    Q_PROPERTY(QVector3D eye READ eye NOTIFY cameraChanged FINAL)
    Q_PROPERTY(QVector3D look READ look NOTIFY cameraChanged FINAL)
    Q_PROPERTY(double fieldOfView READ fieldOfView CONSTANT FINAL)
    Q_PROPERTY(double nearest READ nearest NOTIFY cameraChanged FINAL)
    Q_PROPERTY(double farthest READ farthest NOTIFY cameraChanged FINAL)
    Q_PROPERTY(bool isFitted READ isFitted NOTIFY cameraChanged FINAL)
    Q_PROPERTY(QStringList quarters READ quarters CONSTANT FINAL)
    Q_PROPERTY(QList<QPointF> quarterPlaces READ quarterPlaces NOTIFY cameraChanged FINAL)
    Q_PROPERTY(QVector3D sunbeam READ sunbeam NOTIFY sunChanged FINAL)
    Q_PROPERTY(double sunlight READ sunlight NOTIFY sunChanged FINAL)

public:
    RoundViewModel(Workspace& workspace, SideViewModel& side, QObject* parent = nullptr);

    [[nodiscard]] RoundPartModel* parts() { return &parts_; }
    [[nodiscard]] DrawingColours* colours() const { return colours_; }
    void setColours(DrawingColours* colours);
    [[nodiscard]] bool isShown() const { return isShown_; }
    void setShown(bool shown);
    /// What the cuts take is told apart: in a colour of its own while it stands, see-through when
    /// the cuts are made.
    [[nodiscard]] bool showsFalling() const { return showsFalling_; }
    void setShowsFalling(bool shows);
    [[nodiscard]] bool hasFalling() const { return workspace_.treeAfter().has_value(); }
    /// The picture in words, for those who don't see it.
    [[nodiscard]] QString summary() const;

    [[nodiscard]] const RoundCamera& camera() const { return camera_; }
    [[nodiscard]] QVector3D eye() const;
    [[nodiscard]] QVector3D look() const; ///< turns of the camera
    [[nodiscard]] double fieldOfView() const { return RoundCamera::kFieldOfView_deg; }
    [[nodiscard]] double nearest() const; ///< what is seen lies between, m from the eye
    [[nodiscard]] double farthest() const;
    [[nodiscard]] bool isFitted() const { return !zoomed_; }
    [[nodiscard]] QStringList quarters() const; ///< "N", "E", "S", "W"
    /// Where these stand in the picture, beside the ring round the tree; far outside it if behind.
    [[nodiscard]] QList<QPointF> quarterPlaces() const;

    [[nodiscard]] model::light::SunPosition sun() const;
    [[nodiscard]] QVector3D sunbeam() const; ///< turns of the light
    [[nodiscard]] double sunlight() const;   ///< 0 night .. 1 full sun

    Q_INVOKABLE void resize(double width, double height);
    /// Walks round by a drag of the picture, in pixels.
    Q_INVOKABLE void drag(double right, double down);
    /// Walks round by whole steps of 5 degrees.
    Q_INVOKABLE void walk(int stepsRight, int stepsUp);
    Q_INVOKABLE void zoom(double factor); ///< over 1: nearer
    Q_INVOKABLE void fit();
    /// Chooses the limb seen there, else another tree seen there, else none. While sawing: says
    /// where on the limb the saw is.
    Q_INVOKABLE void chooseAt(double x, double y);
    /// The next limb of those that are seen, or the one before; round and round.
    Q_INVOKABLE void chooseNext(int step);

signals:
    void coloursChanged();
    void shownChanged();
    void sceneChanged();
    void cameraChanged();
    void sunChanged();
    void sawn(const QString& limb, double at_m);

private:
    /// What the solids are made from; while it is the same, they are.
    struct Made {
        GardenSnapshot garden;
        std::string tree;
        std::optional<model::Tree> after;
        bool showsAfter{};
        bool showsFalling{};
        std::chrono::year_month_day date{};
        friend bool operator==(const Made&, const Made&) = default;
    };
    /// Leaf of the garden's trees and neighbours, as they were sketched.
    struct Sketched {
        GardenSnapshot garden;
        std::vector<std::shared_ptr<const model::Foliation>> trees;
        std::vector<std::shared_ptr<const model::Foliation>> neighbours;
    };

    void later(); ///< once, when all that changes at a time has changed
    void show();
    void turnTo(double bearing_deg, double down_deg);
    void refit();
    [[nodiscard]] const model::Tree* standing() const; ///< as shown; null: none
    [[nodiscard]] std::vector<RoundPart> scene();
    [[nodiscard]] std::vector<RoundLook> looks(const std::vector<RoundPart>& parts) const;
    [[nodiscard]] std::optional<LimbShade> shade(const std::string& limb) const;
    void sketchLeaf();
    [[nodiscard]] std::shared_ptr<const model::Foliation> keptLeaf(const model::Tree& tree) const;
    [[nodiscard]] double share(const std::string& species, const model::LeafDates& dates) const;

    Workspace& workspace_;
    SideViewModel& side_;
    RoundPartModel parts_;
    DrawingColours* colours_{};
    RoundCamera camera_;
    bool isShown_{};
    bool showsFalling_{true};
    bool zoomed_{};
    std::string fittedTree_;
    Made made_;
    Sketched sketched_;
    QTimer soon_;
};

} // namespace app
