#pragma once

#include "app/view/workspace.hpp"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <functional>

namespace app {

/// The open garden itself: its name, place, wind, slope and sunshine, and the measures that all of
/// the window is read in. Every setter is one named step of history; what can't be read is said in
/// words and changes nothing.
class GroundsViewModel final : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("handed to the window")
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY changed FINAL)
    Q_PROPERTY(QString latitude READ latitude WRITE setLatitude NOTIFY changed FINAL)
    Q_PROPERTY(QString longitude READ longitude WRITE setLongitude NOTIFY changed FINAL)
    Q_PROPERTY(QString altitude READ altitude WRITE setAltitude NOTIFY changed FINAL)
    Q_PROPERTY(QStringList exposures READ exposures CONSTANT FINAL)
    Q_PROPERTY(int exposure READ exposure WRITE setExposure NOTIFY changed FINAL)
    Q_PROPERTY(QString gust READ gust WRITE setGust NOTIFY changed FINAL)
    Q_PROPERTY(QString fall READ fall WRITE setFall NOTIFY changed FINAL)
    Q_PROPERTY(QStringList ways READ ways CONSTANT FINAL)
    Q_PROPERTY(int fallsTo READ fallsTo WRITE setFallsTo NOTIFY changed FINAL)
    Q_PROPERTY(QString fallsToText READ fallsToText NOTIFY changed FINAL)
    Q_PROPERTY(QStringList months READ months CONSTANT FINAL)
    Q_PROPERTY(QStringList sunshine READ sunshine NOTIFY changed FINAL)
    Q_PROPERTY(QString sunshineText READ sunshineText NOTIFY changed FINAL)
    Q_PROPERTY(QStringList measures READ measures CONSTANT FINAL)
    Q_PROPERTY(int measure READ measure WRITE setMeasure NOTIFY changed FINAL)

public:
    explicit GroundsViewModel(Workspace& workspace, QObject* parent = nullptr);

    [[nodiscard]] QString name() const;
    void setName(const QString& name);
    [[nodiscard]] QString latitude() const;
    void setLatitude(const QString& typed);
    [[nodiscard]] QString longitude() const;
    void setLongitude(const QString& typed);
    [[nodiscard]] QString altitude() const;
    void setAltitude(const QString& typed);
    [[nodiscard]] QStringList exposures() const;
    [[nodiscard]] int exposure() const;
    void setExposure(int exposure);
    [[nodiscard]] QString gust() const; ///< that the trees should bear
    void setGust(const QString& typed);
    [[nodiscard]] QString fall() const; ///< of the ground, "8 %"; empty: level
    /// \param typed  "8 %", or "1 in 12"; empty or 0: level
    void setFall(const QString& typed);
    [[nodiscard]] QStringList ways() const; ///< the eight directions, from north
    [[nodiscard]] int fallsTo() const;      ///< into ways(): the nearest; -1: level ground
    void setFallsTo(int way);
    [[nodiscard]] QString fallsToText() const;
    [[nodiscard]] QStringList months() const;
    /// Twelve shares as typed; empty: not known.
    [[nodiscard]] QStringList sunshine() const;
    [[nodiscard]] QString sunshineText() const; ///< what they do, or what is still missing
    [[nodiscard]] QStringList measures() const;
    [[nodiscard]] int measure() const;
    void setMeasure(int measure);

    /// \param month  0 .. 11. Light is reckoned with them once all twelve are there.
    Q_INVOKABLE void setSunshine(int month, const QString& typed);
    Q_INVOKABLE void forgetSunshine();

signals:
    void changed();

private:
    void change(const QString& what, const std::function<void(model::Garden&)>& change);
    void refuse(const QString& expected);
    void onGarden();

    Workspace& workspace_;
    std::vector<std::optional<double>> shares_; ///< twelve, as typed so far
};

} // namespace app
