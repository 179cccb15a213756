#include "app/view/new_garden_view_model.hpp"

#include "app/format/parse_degrees.hpp"
#include "app/view/name_search.hpp"
#include "app/words/fault_words.hpp"
#include "app/words/place_words.hpp"
#include "app/words/wind_words.hpp"
#include "model/document/validate.hpp"

#include <algorithm>
#include <cmath>

namespace app {
namespace {

constexpr std::size_t kMostCities = 8;

QString title(const City& city)
{
    return city.country.isEmpty() || city.country == city.name
               ? city.name
               : QCoreApplication::translate("app::NewGardenViewModel", "%1, %2", "city, country")
                     .arg(city.name, city.country);
}

} // namespace

NewGardenViewModel::NewGardenViewModel(Workspace& workspace, std::vector<City> cities, QString home,
                                       QObject* parent)
    : QObject(parent), workspace_(workspace), all_(std::move(cities)), home_(std::move(home))
{
    for (const auto& city : all_)
        searched_ << city.name + QLatin1Char('\n') + city.country;
    connect(&workspace_, &Workspace::unitsChanged, this, &NewGardenViewModel::reset);
    reset();
}

void NewGardenViewModel::reset()
{
    name_ = tr("My garden");
    cityTyped_.clear();
    found_.clear();
    latitude_.clear();
    longitude_.clear();
    altitude_.clear();
    zone_.clear();
    exposure_ = static_cast<int>(model::Exposure::scattered);
    setGustChoice(0);
    const auto home = std::ranges::find(all_, home_, &City::zone);
    if (home != all_.end())
        take(*home);
    emit changed();
}

void NewGardenViewModel::setName(const QString& name)
{
    if (name == name_)
        return;
    name_ = name;
    emit changed();
}

void NewGardenViewModel::setCityTyped(const QString& typed)
{
    if (typed == cityTyped_)
        return;
    cityTyped_ = typed;
    found_ = typed.trimmed().isEmpty() ? std::vector<std::size_t>()
                                       : searchNames(searched_, typed, kMostCities);
    emit changed();
}

QStringList NewGardenViewModel::cities() const
{
    QStringList titles;
    for (const auto index : found_)
        titles << title(all_[index]);
    return titles;
}

void NewGardenViewModel::takeCity(int index)
{
    if (index < 0 || static_cast<std::size_t>(index) >= found_.size())
        return;
    take(all_[found_[static_cast<std::size_t>(index)]]);
    emit changed();
}

void NewGardenViewModel::take(const City& city)
{
    cityTyped_ = title(city);
    found_.clear();
    latitude_ = workspace_.units().number(city.latitude_deg, 3);
    longitude_ = workspace_.units().number(city.longitude_deg, 3);
    zone_ = city.zone;
}

void NewGardenViewModel::setLatitude(const QString& typed)
{
    if (typed == latitude_)
        return;
    latitude_ = typed;
    placeTyped();
}

void NewGardenViewModel::setLongitude(const QString& typed)
{
    if (typed == longitude_)
        return;
    longitude_ = typed;
    placeTyped();
}

void NewGardenViewModel::placeTyped()
{
    zone_.clear();
    cityTyped_.clear();
    found_.clear();
    emit changed();
}

void NewGardenViewModel::setAltitude(const QString& typed)
{
    if (typed == altitude_)
        return;
    altitude_ = typed;
    emit changed();
}

std::optional<double> NewGardenViewModel::latitude_deg() const
{
    const auto value = parseDegrees(latitude_, workspace_.units().locale(), 'N', 'S');
    return value && std::abs(*value) <= 90.0 ? value : std::nullopt;
}

std::optional<double> NewGardenViewModel::longitude_deg() const
{
    const auto value = parseDegrees(longitude_, workspace_.units().locale(), 'E', 'W');
    return value && std::abs(*value) <= 180.0 ? value : std::nullopt;
}

std::optional<double> NewGardenViewModel::altitude_m() const
{
    return altitude_.trimmed().isEmpty() ? std::optional(0.0)
                                         : workspace_.units().parseLength_m(altitude_);
}

const City* NewGardenViewModel::clockCity() const
{
    const auto taken = std::ranges::find(all_, zone_, &City::zone);
    if (taken != all_.end())
        return &*taken;
    const auto latitude = latitude_deg();
    const auto longitude = longitude_deg();
    return latitude && longitude ? nearestCity(all_, *latitude, *longitude) : nullptr;
}

QString NewGardenViewModel::clockText() const
{
    const auto* city = clockCity();
    const auto latitude = latitude_deg();
    const auto longitude = longitude_deg();
    if (!city || !latitude || !longitude)
        return {};
    const double away_km = distance_km(*city, *latitude, *longitude);
    if (away_km < 1.0)
        return tr("By the clock of %1.").arg(title(*city));
    return tr("By the clock of %1, %2 km away.")
        .arg(title(*city), workspace_.units().number(away_km, 0));
}

QStringList NewGardenViewModel::exposures() const
{
    return exposureWords();
}

void NewGardenViewModel::setExposure(int exposure)
{
    if (exposure == exposure_ || exposure < 0 || exposure >= exposureWords().size())
        return;
    exposure_ = exposure;
    emit changed();
}

QStringList NewGardenViewModel::gusts() const
{
    QStringList words;
    for (const auto& choice : gustChoices(workspace_.units()))
        words << choice.words;
    return words;
}

void NewGardenViewModel::setGustChoice(int choice)
{
    const auto choices = gustChoices(workspace_.units());
    if (choice < 0 || static_cast<std::size_t>(choice) >= choices.size())
        return;
    gustChoice_ = choice;
    gust_ = workspace_.units().speed(choices[static_cast<std::size_t>(choice)].gust_m_s);
    gust_ = gust_.section(QLatin1Char('('), 0, 0).trimmed();
    emit changed();
}

void NewGardenViewModel::setGust(const QString& typed)
{
    if (typed == gust_)
        return;
    gust_ = typed;
    gustChoice_ = -1;
    emit changed();
}

QString NewGardenViewModel::gustWord() const
{
    const auto gust = workspace_.units().parseSpeed_m_s(gust_);
    return gust ? capitalised(forceWords(beaufortOfGust(*gust))) : QString();
}

QString NewGardenViewModel::measuresText() const
{
    return measuresWords(workspace_.units().measures());
}

QString NewGardenViewModel::problem() const
{
    if (name_.trimmed().isEmpty())
        return tr("Give the garden a name.");
    if (latitude_.trimmed().isEmpty() || longitude_.trimmed().isEmpty())
        return tr("Find the nearest city, or type latitude and longitude.");
    if (!latitude_deg())
        return tr("Latitude: degrees north such as 47.4, or south such as 33.9 S.");
    if (!longitude_deg())
        return tr("Longitude: degrees east such as 8.5, or west such as 77.0 W.");
    const auto altitude = altitude_m();
    if (!altitude || *altitude < -430.0 || *altitude > 6000.0)
        return tr("Height above the sea: a height such as %1.")
            .arg(workspace_.units().roughLength(430.0));
    const auto gust = workspace_.units().parseSpeed_m_s(gust_);
    if (!gust || *gust < 0.0 || *gust > 100.0)
        return tr("Gust: a wind speed such as %1.").arg(workspace_.units().speed(25.0));
    return {};
}

bool NewGardenViewModel::start()
{
    if (!problem().isEmpty())
        return false;
    model::Garden garden;
    garden.name = name_.trimmed().toStdString();
    garden.place.latitude_deg = *latitude_deg();
    garden.place.longitude_deg = *longitude_deg();
    garden.place.altitude_m = *altitude_m();
    if (const auto* city = clockCity())
        garden.place.timeZone = city->zone.toStdString();
    garden.exposure = static_cast<model::Exposure>(exposure_);
    garden.designGust_m_s = *workspace_.units().parseSpeed_m_s(gust_);
    const auto faults = model::validate(garden);
    if (!faults.empty()) {
        workspace_.say(
            tr("That can't be a garden: it needs %1.").arg(faultWords(faults.front().expected)));
        return false;
    }
    workspace_.document().start(std::move(garden));
    emit started();
    return true;
}

} // namespace app
