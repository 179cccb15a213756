#pragma once

#include "app/view/workspace.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace app {

/// The gust, the day and the hour that the gardener asks about, as sliders show them.
class ConditionsViewModel final : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("handed to the page by the window")
    Q_PROPERTY(double gust READ gust WRITE setGust NOTIFY changed FINAL)
    Q_PROPERTY(double greatestGust READ greatestGust CONSTANT FINAL)
    Q_PROPERTY(QString gustText READ gustText NOTIFY changed FINAL)
    Q_PROPERTY(QString gustWord READ gustWord NOTIFY changed FINAL)
    Q_PROPERTY(int dayOfYear READ dayOfYear WRITE setDayOfYear NOTIFY changed FINAL)
    Q_PROPERTY(int daysInYear READ daysInYear NOTIFY changed FINAL)
    Q_PROPERTY(QString dayText READ dayText NOTIFY changed FINAL)
    Q_PROPERTY(double hour READ hour WRITE setHour NOTIFY changed FINAL)
    Q_PROPERTY(QString hourText READ hourText NOTIFY changed FINAL)
    Q_PROPERTY(QString sunText READ sunText NOTIFY changed FINAL)

public:
    explicit ConditionsViewModel(Workspace& workspace, QObject* parent = nullptr);

    [[nodiscard]] double gust() const { return workspace_.gust_m_s(); } ///< m/s
    void setGust(double gust_m_s) { workspace_.setGust_m_s(gust_m_s); }
    [[nodiscard]] double greatestGust() const { return 60.0; } ///< m/s, where the slider ends
    [[nodiscard]] QString gustText() const;
    [[nodiscard]] QString gustWord() const; ///< "storm (force 10)"
    [[nodiscard]] int dayOfYear() const;    ///< 1 .. 366
    void setDayOfYear(int day);
    [[nodiscard]] int daysInYear() const;
    [[nodiscard]] QString dayText() const;
    [[nodiscard]] double hour() const { return workspace_.hour(); } ///< 0 .. 24
    void setHour(double hour) { workspace_.setHour(hour); }
    [[nodiscard]] QString hourText() const;
    [[nodiscard]] QString sunText() const; ///< where the sun stands, in words

signals:
    void changed();

private:
    Workspace& workspace_;
};

} // namespace app
