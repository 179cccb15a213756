#pragma once

#include "app/place/cities.hpp"
#include "app/view/workspace.hpp"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace app {

/// A garden that is about to be started: its name, its place, its wind. Nothing happens to the open
/// garden before start(). Texts are as they were typed, and problem() says what keeps them from
/// being a garden.
class NewGardenViewModel final : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("handed to the window")
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY changed FINAL)
    Q_PROPERTY(QString cityTyped READ cityTyped WRITE setCityTyped NOTIFY changed FINAL)
    Q_PROPERTY(QStringList cities READ cities NOTIFY changed FINAL)
    Q_PROPERTY(QString latitude READ latitude WRITE setLatitude NOTIFY changed FINAL)
    Q_PROPERTY(QString longitude READ longitude WRITE setLongitude NOTIFY changed FINAL)
    Q_PROPERTY(QString altitude READ altitude WRITE setAltitude NOTIFY changed FINAL)
    Q_PROPERTY(QString clockText READ clockText NOTIFY changed FINAL)
    Q_PROPERTY(QStringList exposures READ exposures CONSTANT FINAL)
    Q_PROPERTY(int exposure READ exposure WRITE setExposure NOTIFY changed FINAL)
    Q_PROPERTY(QStringList gusts READ gusts NOTIFY changed FINAL)
    Q_PROPERTY(int gustChoice READ gustChoice WRITE setGustChoice NOTIFY changed FINAL)
    Q_PROPERTY(QString gust READ gust WRITE setGust NOTIFY changed FINAL)
    Q_PROPERTY(QString gustWord READ gustWord NOTIFY changed FINAL)
    Q_PROPERTY(QString measuresText READ measuresText NOTIFY changed FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)

public:
    /// \param home  the time zone of this computer; its city is the place to start from
    NewGardenViewModel(Workspace& workspace, std::vector<City> cities, QString home,
                       QObject* parent = nullptr);

    [[nodiscard]] const QString& name() const { return name_; }
    void setName(const QString& name);
    /// What was typed to find a city, or the city taken.
    [[nodiscard]] const QString& cityTyped() const { return cityTyped_; }
    void setCityTyped(const QString& typed);
    [[nodiscard]] QStringList cities() const; ///< those that fit, "Zurich, Switzerland"
    [[nodiscard]] const QString& latitude() const { return latitude_; }
    void setLatitude(const QString& typed);
    [[nodiscard]] const QString& longitude() const { return longitude_; }
    void setLongitude(const QString& typed);
    [[nodiscard]] const QString& altitude() const { return altitude_; }
    void setAltitude(const QString& typed);
    /// By whose clock the garden lives.
    [[nodiscard]] QString clockText() const;
    [[nodiscard]] QStringList exposures() const;
    [[nodiscard]] int exposure() const { return exposure_; }
    void setExposure(int exposure);
    [[nodiscard]] QStringList gusts() const;
    [[nodiscard]] int gustChoice() const { return gustChoice_; } ///< -1: typed
    void setGustChoice(int choice);
    [[nodiscard]] const QString& gust() const { return gust_; }
    void setGust(const QString& typed);
    [[nodiscard]] QString gustWord() const;
    [[nodiscard]] QString measuresText() const;
    /// Why it can't be started, as a sentence; empty: it can.
    [[nodiscard]] QString problem() const;

    /// Everything as at first.
    Q_INVOKABLE void reset();
    /// Takes one of cities().
    Q_INVOKABLE void takeCity(int index);
    /// Opens the garden, with nothing in it yet, in place of the open one.
    /// \returns false while problem() says something
    Q_INVOKABLE bool start();

signals:
    void changed();
    void started();

private:
    [[nodiscard]] std::optional<double> latitude_deg() const;
    [[nodiscard]] std::optional<double> longitude_deg() const;
    [[nodiscard]] std::optional<double> altitude_m() const;
    [[nodiscard]] const City* clockCity() const;
    void take(const City& city);
    void placeTyped();

    Workspace& workspace_;
    std::vector<City> all_;
    QStringList searched_; ///< names of all_, as they are searched
    QString home_;
    QString name_;
    QString cityTyped_;
    std::vector<std::size_t> found_;
    QString latitude_;
    QString longitude_;
    QString altitude_;
    QString zone_; ///< of a city that was taken; empty: the nearest to the place typed
    int exposure_{};
    int gustChoice_{};
    QString gust_;
};

} // namespace app
