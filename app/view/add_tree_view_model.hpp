#pragma once

#include "app/view/workspace.hpp"
#include "model/sketch/first_tree.hpp"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace app {

/// A tree that is about to be added: what it is, what was measured of it, where it stands. Texts
/// are as they were typed; a measure left empty takes the usual one for the girth. Nothing happens
/// to the garden before add().
class AddTreeViewModel final : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("handed to the window")
    Q_PROPERTY(QString typed READ typed WRITE setTyped NOTIFY changed FINAL)
    Q_PROPERTY(QStringList found READ found NOTIFY changed FINAL)
    Q_PROPERTY(QString species READ species NOTIFY changed FINAL)
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY changed FINAL)
    Q_PROPERTY(QString usualName READ usualName NOTIFY changed FINAL)
    Q_PROPERTY(bool byGirth READ byGirth WRITE setByGirth NOTIFY changed FINAL)
    Q_PROPERTY(QString stem READ stem WRITE setStem NOTIFY changed FINAL)
    Q_PROPERTY(QString stemHint READ stemHint NOTIFY changed FINAL)
    Q_PROPERTY(QString height READ height WRITE setHeight NOTIFY changed FINAL)
    Q_PROPERTY(QString usualHeight READ usualHeight NOTIFY changed FINAL)
    Q_PROPERTY(QString spread READ spread WRITE setSpread NOTIFY changed FINAL)
    Q_PROPERTY(QString usualSpread READ usualSpread NOTIFY changed FINAL)
    Q_PROPERTY(QString lowestLimb READ lowestLimb WRITE setLowestLimb NOTIFY changed FINAL)
    Q_PROPERTY(QString usualLowestLimb READ usualLowestLimb NOTIFY changed FINAL)
    Q_PROPERTY(QStringList habits READ habits CONSTANT FINAL)
    Q_PROPERTY(int habit READ habit WRITE setHabit NOTIFY changed FINAL)
    Q_PROPERTY(bool isEspalier READ isEspalier NOTIFY changed FINAL)
    Q_PROPERTY(QString along READ along WRITE setAlong NOTIFY changed FINAL)
    Q_PROPERTY(QString east READ east WRITE setEast NOTIFY changed FINAL)
    Q_PROPERTY(QString north READ north WRITE setNorth NOTIFY changed FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    Q_PROPERTY(QString remark READ remark NOTIFY changed FINAL)

public:
    explicit AddTreeViewModel(Workspace& workspace, QObject* parent = nullptr);

    /// What was typed to find a species, or the one taken.
    [[nodiscard]] const QString& typed() const { return typed_; }
    void setTyped(const QString& typed);
    [[nodiscard]] QStringList found() const; ///< species that fit, "silver maple (Acer ...)"
    [[nodiscard]] QString species() const;   ///< the one taken, Latin; empty: none yet
    [[nodiscard]] const QString& name() const { return name_; }
    void setName(const QString& name) { take(name_, name); }
    [[nodiscard]] QString usualName() const;
    [[nodiscard]] bool byGirth() const { return byGirth_; } ///< round the stem; else through it
    void setByGirth(bool byGirth);
    [[nodiscard]] const QString& stem() const { return stem_; }
    void setStem(const QString& typed) { take(stem_, typed); }
    [[nodiscard]] QString stemHint() const; ///< the same measured the other way
    [[nodiscard]] const QString& height() const { return height_; }
    void setHeight(const QString& typed) { take(height_, typed); }
    [[nodiscard]] QString usualHeight() const;
    [[nodiscard]] const QString& spread() const { return spread_; }
    void setSpread(const QString& typed) { take(spread_, typed); }
    [[nodiscard]] QString usualSpread() const;
    [[nodiscard]] const QString& lowestLimb() const { return lowestLimb_; }
    void setLowestLimb(const QString& typed) { take(lowestLimb_, typed); }
    [[nodiscard]] QString usualLowestLimb() const;
    [[nodiscard]] QStringList habits() const;
    [[nodiscard]] int habit() const { return static_cast<int>(habit_); }
    void setHabit(int habit);
    [[nodiscard]] bool isEspalier() const { return habit_ == model::sketch::Habit::espalier; }
    [[nodiscard]] const QString& along() const { return along_; } ///< bearing it runs along
    void setAlong(const QString& typed) { take(along_, typed); }
    [[nodiscard]] const QString& east() const { return east_; } ///< of the plan's origin
    void setEast(const QString& typed) { take(east_, typed); }
    [[nodiscard]] const QString& north() const { return north_; }
    void setNorth(const QString& typed) { take(north_, typed); }
    /// Why it can't be added, as a sentence; empty: it can.
    [[nodiscard]] QString problem() const;
    /// What is odd about the measures together, against published trees; may be empty.
    [[nodiscard]] QString remark() const;

    /// Everything as at first, at a place beside the trees that are there.
    Q_INVOKABLE void reset();
    /// Takes one of found().
    Q_INVOKABLE void takeSpecies(int index);
    /// The height by a stick's shadow; empty if the measures can't be. takeHeight() uses it.
    Q_INVOKABLE QString heightByShadow(const QString& stick, const QString& stickShadow,
                                       const QString& treeShadow) const;
    /// The same by the angle to the top.
    Q_INVOKABLE QString heightByAngle(const QString& angle, const QString& distance,
                                      const QString& eye) const;
    /// Sketches the tree and adds it to the garden as one step, and chooses it.
    /// \returns false while problem() says something
    Q_INVOKABLE bool add();

signals:
    void changed();
    void added();

private:
    void take(QString& into, const QString& typed);
    [[nodiscard]] const model::Species* chosen() const;
    [[nodiscard]] std::optional<double> stemDiameter_m() const;
    [[nodiscard]] std::optional<model::sketch::FirstMeasures> usual() const;
    [[nodiscard]] std::optional<model::sketch::FirstMeasures> measures() const;
    [[nodiscard]] std::optional<double> bearing_deg() const;
    [[nodiscard]] QString unreadable() const;
    [[nodiscard]] model::Tree sketched() const;

    Workspace& workspace_;
    QStringList names_; ///< of all species, as they are searched
    QString typed_;
    std::vector<std::size_t> found_;
    std::optional<std::size_t> species_;
    QString name_;
    bool byGirth_{true};
    QString stem_;
    QString height_;
    QString spread_;
    QString lowestLimb_;
    model::sketch::Habit habit_{model::sketch::Habit::spreading};
    QString along_;
    QString east_;
    QString north_;
};

} // namespace app
