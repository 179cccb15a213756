#pragma once

#include "app/view/tone.hpp"
#include "app/view/workspace.hpp"
#include "model/advice/day_check.hpp"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace app {

/// Whether the weather speaks against tree work today, from what the gardener types in.
class DayViewModel final : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("handed to the page by the window")
    Q_PROPERTY(QString air READ air WRITE setAir NOTIFY changed FINAL)
    Q_PROPERTY(QString humidity READ humidity WRITE setHumidity NOTIFY changed FINAL)
    Q_PROPERTY(QString gust READ gust WRITE setGust NOTIFY changed FINAL)
    Q_PROPERTY(QString airExample READ airExample NOTIFY changed FINAL)
    Q_PROPERTY(QString gustExample READ gustExample NOTIFY changed FINAL)
    Q_PROPERTY(QString headline READ headline NOTIFY changed FINAL)
    Q_PROPERTY(app::Tone::Value tone READ tone NOTIFY changed FINAL)
    Q_PROPERTY(QStringList findings READ findings NOTIFY changed FINAL)
    Q_PROPERTY(QStringList checks READ checks CONSTANT FINAL)

public:
    explicit DayViewModel(Workspace& workspace, QObject* parent = nullptr);

    [[nodiscard]] QString air() const { return air_; } ///< as typed
    void setAir(const QString& air);
    [[nodiscard]] QString humidity() const { return humidity_; }
    void setHumidity(const QString& humidity);
    [[nodiscard]] QString gust() const { return gust_; }
    void setGust(const QString& gust);
    [[nodiscard]] QString airExample() const;
    [[nodiscard]] QString gustExample() const;
    /// The answer, or which field can't be read, or that nothing is known yet.
    [[nodiscard]] QString headline() const;
    [[nodiscard]] Tone::Value tone() const;
    [[nodiscard]] QStringList findings() const; ///< what speaks against it, the gravest first
    /// As far as it was typed and can be read.
    [[nodiscard]] const model::advice::DayWeather& weather() const { return weather_; }
    [[nodiscard]] QStringList checks() const; ///< to be looked at before every job

signals:
    void changed();

private:
    void read();

    Workspace& workspace_;
    QString air_;
    QString humidity_;
    QString gust_;
    model::advice::DayWeather weather_;
    std::vector<model::advice::DayFinding> found_;
    QString unread_; ///< what can't be read, in a sentence
};

} // namespace app
