#pragma once

#include "app/view/side_view_model.hpp"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <functional>

namespace app {

/// The chosen limb: its girth by tape, its union, its leaf, what is wrong with it, and limbs made
/// from it. Every setter is one named step of history; what can't be read is said in words and
/// changes nothing.
class LimbViewModel final : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("handed to the window")
    Q_PROPERTY(bool any READ any NOTIFY changed FINAL)
    Q_PROPERTY(bool isTrunk READ isTrunk NOTIFY changed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QStringList stations READ stations NOTIFY changed FINAL)
    Q_PROPERTY(int station READ station WRITE setStation NOTIFY changed FINAL)
    Q_PROPERTY(QString girth READ girth WRITE setGirth NOTIFY changed FINAL)
    Q_PROPERTY(QString diameter READ diameter WRITE setDiameter NOTIFY changed FINAL)
    Q_PROPERTY(QStringList measuredWords READ measuredWords CONSTANT FINAL)
    Q_PROPERTY(int measured READ measured WRITE setMeasured NOTIFY changed FINAL)
    Q_PROPERTY(QStringList unions READ unions CONSTANT FINAL)
    Q_PROPERTY(int unionKind READ unionKind WRITE setUnionKind NOTIFY changed FINAL)
    Q_PROPERTY(bool leafy READ leafy WRITE setLeafy NOTIFY changed FINAL)
    Q_PROPERTY(QString leafFrom READ leafFrom WRITE setLeafFrom NOTIFY changed FINAL)
    Q_PROPERTY(QString leafRadius READ leafRadius WRITE setLeafRadius NOTIFY changed FINAL)
    Q_PROPERTY(QString hanging READ hanging WRITE setHanging NOTIFY changed FINAL)
    Q_PROPERTY(QStringList densities READ densities CONSTANT FINAL)
    Q_PROPERTY(int density READ density WRITE setDensity NOTIFY changed FINAL)
    Q_PROPERTY(QString fruit READ fruit WRITE setFruit NOTIFY changed FINAL)
    Q_PROPERTY(QStringList defectKinds READ defectKinds CONSTANT FINAL)
    Q_PROPERTY(QStringList defects READ defects NOTIFY changed FINAL)

public:
    LimbViewModel(Workspace& workspace, SideViewModel& side, QObject* parent = nullptr);

    [[nodiscard]] bool any() const { return workspace_.limb() != nullptr; }
    [[nodiscard]] bool isTrunk() const { return any() && !workspace_.limb()->parent; }
    [[nodiscard]] QString title() const;
    [[nodiscard]] QStringList stations() const; ///< places that can be taped, from the union on
    [[nodiscard]] int station() const;
    void setStation(int station);
    [[nodiscard]] QString girth() const; ///< round the station
    void setGirth(const QString& typed);
    [[nodiscard]] QString diameter() const; ///< through it
    void setDiameter(const QString& typed);
    [[nodiscard]] QStringList measuredWords() const;
    [[nodiscard]] int measured() const;
    void setMeasured(int measured);
    [[nodiscard]] QStringList unions() const;
    [[nodiscard]] int unionKind() const;
    void setUnionKind(int kind);
    [[nodiscard]] bool leafy() const { return any() && workspace_.limb()->foliage; }
    void setLeafy(bool leafy);
    [[nodiscard]] QString leafFrom() const;
    void setLeafFrom(const QString& typed);
    [[nodiscard]] QString leafRadius() const;
    void setLeafRadius(const QString& typed);
    [[nodiscard]] QString hanging() const;
    void setHanging(const QString& typed);
    [[nodiscard]] QStringList densities() const;
    [[nodiscard]] int density() const;
    void setDensity(int density);
    [[nodiscard]] QString fruit() const; ///< ripe crop on this limb alone
    void setFruit(const QString& typed);
    [[nodiscard]] QStringList defectKinds() const;
    [[nodiscard]] QStringList defects() const; ///< "Crack, 1.2 m along"

    /// \param at  along the limb from its union
    /// \param wall  sound wood around a hollow; empty: not known
    /// \returns whether it could be
    Q_INVOKABLE bool addDefect(int kind, const QString& at, const QString& wall);
    Q_INVOKABLE void removeDefect(int index);

    /// A copy at the same union, a quarter turn on; a twin across the view.
    Q_INVOKABLE void copy();
    Q_INVOKABLE void mirror();
    /// Divides it at the chosen station, or in the middle.
    Q_INVOKABLE void split();

signals:
    void changed();

private:
    void changeLimb(const QString& what, const std::function<void(model::Limb&)>& change);
    void makeLimb(const QString& step, model::Tree after);
    [[nodiscard]] std::optional<double> readLength(const QString& typed, const QString& label);
    void setThickness(std::optional<double> diameter_m, const QString& example);

    Workspace& workspace_;
    SideViewModel& side_;
    int station_{};
};

} // namespace app
