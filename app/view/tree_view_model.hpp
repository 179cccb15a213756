#pragma once

#include "app/view/workspace.hpp"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace app {

/// The chosen tree itself: its name, how it fares, what was seen of it. Every setter is one named
/// step of history.
class TreeViewModel final : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("handed to the window")
    Q_PROPERTY(bool any READ any NOTIFY changed FINAL)
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY changed FINAL)
    Q_PROPERTY(QString species READ species NOTIFY changed FINAL)
    Q_PROPERTY(QString planted READ planted WRITE setPlanted NOTIFY changed FINAL)
    Q_PROPERTY(bool dropsLeaf READ dropsLeaf NOTIFY changed FINAL)
    Q_PROPERTY(QString leafOn READ leafOn WRITE setLeafOn NOTIFY changed FINAL)
    Q_PROPERTY(QString leafOff READ leafOff WRITE setLeafOff NOTIFY changed FINAL)
    Q_PROPERTY(QStringList vigours READ vigours CONSTANT FINAL)
    Q_PROPERTY(int vigour READ vigour WRITE setVigour NOTIFY changed FINAL)
    Q_PROPERTY(QStringList protections READ protections CONSTANT FINAL)
    Q_PROPERTY(int protection READ protection WRITE setProtection NOTIFY changed FINAL)
    Q_PROPERTY(QStringList signs READ signs CONSTANT FINAL)
    Q_PROPERTY(QList<bool> seen READ seen NOTIFY changed FINAL)

public:
    explicit TreeViewModel(Workspace& workspace, QObject* parent = nullptr);

    [[nodiscard]] bool any() const { return workspace_.tree() != nullptr; }
    [[nodiscard]] QString name() const;
    void setName(const QString& name);
    [[nodiscard]] QString species() const;
    [[nodiscard]] QString planted() const; ///< year; empty: not known
    void setPlanted(const QString& typed);
    [[nodiscard]] bool dropsLeaf() const;
    [[nodiscard]] QString leafOn() const; ///< day its buds break; empty: by species and place
    void setLeafOn(const QString& typed);
    [[nodiscard]] QString leafOff() const; ///< day when half of its leaves are down
    void setLeafOff(const QString& typed);
    [[nodiscard]] QStringList vigours() const;
    [[nodiscard]] int vigour() const;
    void setVigour(int vigour);
    [[nodiscard]] QStringList protections() const;
    [[nodiscard]] int protection() const;
    void setProtection(int protection);
    [[nodiscard]] QStringList signs() const; ///< what a gardener can see from the ground
    [[nodiscard]] QList<bool> seen() const;  ///< of each of them, whether it was

    Q_INVOKABLE void setSeen(int sign, bool seen);
    Q_INVOKABLE void remove();

signals:
    void changed();

private:
    using Day = std::optional<std::chrono::month_day>;
    void setLeafDay(const QString& typed, Day model::LeafDates::*which);

    Workspace& workspace_;
};

} // namespace app
