#pragma once

#include "app/view/plan_editor_view_model.hpp"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <functional>

namespace app {

/// The thing chosen on the plan: its name, what it is, its plant, its sizes, as texts to read and
/// to type. Every setter is one step of history; a text that can't be read becomes a problem in
/// words and changes nothing.
class ThingViewModel final : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("handed to the page by the window")
    Q_PROPERTY(bool any READ any NOTIFY changed FINAL)
    Q_PROPERTY(bool isTree READ isTree NOTIFY changed FINAL)
    Q_PROPERTY(bool isPlanting READ isPlanting NOTIFY changed FINAL)
    Q_PROPERTY(bool isStrip READ isStrip NOTIFY changed FINAL)
    Q_PROPERTY(bool isLine READ isLine NOTIFY changed FINAL)
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY changed FINAL)
    Q_PROPERTY(QStringList sorts READ sorts NOTIFY changed FINAL)
    Q_PROPERTY(int sort READ sort WRITE setSort NOTIFY changed FINAL)
    Q_PROPERTY(QString plantTyped READ plantTyped WRITE setPlantTyped NOTIFY changed FINAL)
    Q_PROPERTY(QStringList plants READ plants NOTIFY changed FINAL)
    Q_PROPERTY(bool hasHeight READ hasHeight NOTIFY changed FINAL)
    Q_PROPERTY(QString height READ height WRITE setHeight NOTIFY changed FINAL)
    Q_PROPERTY(bool isNeighbour READ isNeighbour NOTIFY changed FINAL)
    Q_PROPERTY(QString crownBase READ crownBase WRITE setCrownBase NOTIFY changed FINAL)
    Q_PROPERTY(QString stem READ stem WRITE setStem NOTIFY changed FINAL)
    Q_PROPERTY(QString bearing READ bearing WRITE setBearing NOTIFY changed FINAL)
    Q_PROPERTY(QString headroom READ headroom WRITE setHeadroom NOTIFY changed FINAL)
    Q_PROPERTY(QString usualHeadroom READ usualHeadroom NOTIFY changed FINAL)
    Q_PROPERTY(QString voltage READ voltage WRITE setVoltage NOTIFY changed FINAL)
    Q_PROPERTY(bool hasSize READ hasSize NOTIFY changed FINAL)
    Q_PROPERTY(QString length READ length WRITE setLength NOTIFY changed FINAL)
    Q_PROPERTY(QString width READ width WRITE setWidth NOTIFY changed FINAL)
    Q_PROPERTY(QString east READ east WRITE setEast NOTIFY changed FINAL)
    Q_PROPERTY(QString north READ north WRITE setNorth NOTIFY changed FINAL)

public:
    ThingViewModel(Workspace& workspace, PlanEditorViewModel& editor, QObject* parent = nullptr);

    [[nodiscard]] bool any() const { return editor_.chosen().has_value(); }
    [[nodiscard]] bool isTree() const { return is(ThingKind::tree); }
    [[nodiscard]] bool isPlanting() const { return is(ThingKind::planting); }
    [[nodiscard]] bool isStrip() const { return is(ThingKind::strip); }
    [[nodiscard]] bool isLine() const { return is(ThingKind::line); }
    [[nodiscard]] bool isNeighbour() const { return is(ThingKind::neighbour); }
    [[nodiscard]] QString name() const;
    void setName(const QString& name);
    [[nodiscard]] QStringList sorts() const; ///< what it may be
    [[nodiscard]] int sort() const;
    void setSort(int sort);
    /// What was typed to find a plant, or a neighbour's species; otherwise the one that is there.
    [[nodiscard]] QString plantTyped() const;
    void setPlantTyped(const QString& typed);
    [[nodiscard]] QStringList plants() const;
    [[nodiscard]] bool hasHeight() const;
    [[nodiscard]] QString height() const; ///< of a planting, a structure or a wire
    void setHeight(const QString& typed);
    [[nodiscard]] QString crownBase() const; ///< of a neighbour: height of its lowest leaf
    void setCrownBase(const QString& typed);
    [[nodiscard]] QString stem() const; ///< thickness of a neighbour's; empty: not known
    void setStem(const QString& typed);
    [[nodiscard]] QString bearing() const; ///< of the longer way of a neighbour's crown
    void setBearing(const QString& typed);
    [[nodiscard]] QString headroom() const; ///< wanted over a strip; empty: the usual one
    void setHeadroom(const QString& typed);
    [[nodiscard]] QString usualHeadroom() const;
    [[nodiscard]] QString voltage() const; ///< kV; empty: not known
    void setVoltage(const QString& typed);
    [[nodiscard]] bool hasSize() const;
    [[nodiscard]] QString length() const; ///< along its longest side
    void setLength(const QString& typed);
    [[nodiscard]] QString width() const;
    void setWidth(const QString& typed);
    [[nodiscard]] QString east() const; ///< of its middle, or of a tree's stem
    void setEast(const QString& typed);
    [[nodiscard]] QString north() const;
    void setNorth(const QString& typed);

    Q_INVOKABLE void takePlant(int index);
    /// The search was left: what stands there again is the plant that is there.
    Q_INVOKABLE void leavePlants();

signals:
    void changed();

private:
    using Change = std::function<void(model::Garden&, ThingRef)>;
    [[nodiscard]] bool is(ThingKind kind) const;
    void change(const QString& what, const Change& change);
    void resize(const QString& typed, bool along);
    void moveTo(const QString& typed, bool east);
    [[nodiscard]] std::optional<double> read(const QString& typed, const QString& label);
    [[nodiscard]] std::vector<model::Point2> corners() const;

    Workspace& workspace_;
    PlanEditorViewModel& editor_;
    QStringList plantNames_;
    QStringList speciesNames_;
    std::optional<QString> typed_;
    std::vector<std::size_t> found_;
};

} // namespace app
