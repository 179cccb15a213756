#include "app/format/units.hpp"

#include <gtest/gtest.h>

#include <QLocale>

using namespace std::chrono_literals;

namespace app {
namespace {

const Units kAmerican{QLocale(QStringLiteral("en_US"))};
const Units kBritish{QLocale(QStringLiteral("en_GB"))};
const Units kGerman{QLocale(QStringLiteral("de_DE"))};

/// What a person sees, with plain spaces.
std::string shown(QString text)
{
    return text.replace(QChar::Nbsp, QLatin1Char(' ')).toStdString();
}

TEST(Units, FollowTheLocale)
{
    EXPECT_EQ(kAmerican.measures(), Measures::unitedStates);
    EXPECT_EQ(kBritish.measures(), Measures::unitedKingdom);
    EXPECT_EQ(kGerman.measures(), Measures::metric);
    EXPECT_EQ(Units(QLocale::c()).measures(), Measures::metric);
}

// Published: NIST Special Publication 811 (2008), appendix B.8 (from memory): 1 ft = 0.3048 m,
// 1 lb = 0.453 592 37 kg, 1 mi/h = 0.447 04 m/s, 1 lbf ft = 1.355 818 N m, 1 lbf = 4.448 222 N.
TEST(Units, TurnSiIntoAmericanMeasures)
{
    EXPECT_EQ(shown(kAmerican.length(2.4)), "7 ft 10 in");
    EXPECT_EQ(shown(kAmerican.length(0.3048 * 8)), "8 ft");
    EXPECT_EQ(shown(kAmerican.length(0.05)), "2 in");
    EXPECT_EQ(shown(kAmerican.diameter(0.12)), "4.7 in");
    EXPECT_EQ(shown(kAmerican.mass(38)), "84 lb");
    EXPECT_EQ(shown(kAmerican.speed(25)), "56 mph");
    EXPECT_EQ(shown(kAmerican.speedStep(0.4)), "0.9 mph");
    EXPECT_EQ(shown(kAmerican.moment(3200)), "2360 lbf ft");
    EXPECT_EQ(shown(kAmerican.force(1200)), "270 lbf");
    EXPECT_EQ(shown(kAmerican.area(8.2)), "88.3 ft²");
}

TEST(Units, NeverShowTwelveInches)
{
    EXPECT_EQ(shown(kAmerican.length(0.3048 * 7.99)), "8 ft");
}

TEST(Units, TurnSiIntoMetricMeasures)
{
    EXPECT_EQ(shown(kGerman.length(2.4)), "2,4 m");
    EXPECT_EQ(shown(kGerman.length(2.384)), "2,38 m");
    EXPECT_EQ(shown(kGerman.length(14.13)), "14,1 m");
    EXPECT_EQ(shown(kGerman.roughLength(5.694)), "5,7 m");
    EXPECT_EQ(shown(kGerman.diameter(0.12)), "12 cm");
    EXPECT_EQ(shown(kGerman.diameter(0.046)), "4,6 cm");
    EXPECT_EQ(shown(kGerman.mass(1234)), "1230 kg");
    EXPECT_EQ(shown(kGerman.speed(25)), "90 km/h (25 m/s)");
    EXPECT_EQ(shown(kGerman.speed(22.8)), "82 km/h (23 m/s)");
    EXPECT_EQ(shown(kGerman.speedStep(0.4)), "1,4 km/h");
    EXPECT_EQ(shown(kGerman.moment(240)), "240 N m");
    EXPECT_EQ(shown(kGerman.moment(3210)), "3,21 kN m");
    EXPECT_EQ(shown(kGerman.hours(5.24)), "5,2 h");
    EXPECT_EQ(shown(kGerman.share(0.231)), "23 %");
    EXPECT_EQ(shown(kGerman.share(0.041)), "4,1 %");
}

TEST(Units, KeepBritishWindInMilesAnHour)
{
    EXPECT_EQ(shown(kBritish.length(2.4)), "2.4 m");
    EXPECT_EQ(shown(kBritish.speed(25)), "56 mph");
}

TEST(Units, HaveNoNegativeZero)
{
    EXPECT_EQ(shown(kBritish.length(-0.001)), "0 m");
    EXPECT_EQ(shown(kAmerican.length(-0.001)), "0 in");
}

TEST(Units, NameDatesAsPeopleDo)
{
    EXPECT_EQ(shown(kBritish.date(2025y / 7 / 14)), "14 July 2025");
    EXPECT_EQ(shown(kAmerican.date(2025y / 7 / 14)), "July 14, 2025");
    EXPECT_EQ(shown(kGerman.date(2025y / 7 / 14)), "14. Juli 2025");
    EXPECT_EQ(shown(kGerman.month(3)), "März");
}

TEST(Units, NameBearings)
{
    EXPECT_EQ(Units::bearing(0).toStdString(), "north");
    EXPECT_EQ(Units::bearing(350).toStdString(), "north");
    EXPECT_EQ(Units::bearing(230).toStdString(), "south-west");
    EXPECT_EQ(Units::bearing(-90).toStdString(), "west");
}

struct Typed {
    const char* text;
    double si;
};

TEST(Units, ReadLengths)
{
    for (const auto& [text, si] :
         {Typed{"2.4 m", 2.4}, Typed{"240cm", 2.4}, Typed{"2.4", 2.4}, Typed{"8 ft 2 in", 2.4892},
          Typed{"8'2\"", 2.4892}, Typed{"8 FT", 2.4384}, Typed{"98 in", 2.4892},
          Typed{"2 1/2 in", 0.0635}, Typed{"1/2 in", 0.0127}, Typed{"1 m 20 cm", 1.2},
          Typed{" - 3 m ", -3.0}}) {
        const auto length_m = kBritish.parseLength_m(QString::fromUtf8(text));
        ASSERT_TRUE(length_m) << text;
        EXPECT_NEAR(*length_m, si, 1e-12) << text;
    }
    EXPECT_NEAR(*kAmerican.parseLength_m(QStringLiteral("10")), 3.048, 1e-12);
    EXPECT_NEAR(*kAmerican.parseDiameter_m(QStringLiteral("4")), 0.1016, 1e-12);
    EXPECT_NEAR(*kGerman.parseDiameter_m(QStringLiteral("4,5")), 0.045, 1e-12);
}

TEST(Units, ReadEitherDecimalMark)
{
    EXPECT_NEAR(*kGerman.parseLength_m(QStringLiteral("2,4 m")), 2.4, 1e-12);
    EXPECT_NEAR(*kGerman.parseLength_m(QStringLiteral("1.234 m")), 1.234, 1e-12);
    EXPECT_FALSE(kAmerican.parseLength_m(QStringLiteral("1,234 m")));
}

TEST(Units, ReadSpeeds)
{
    EXPECT_NEAR(*kBritish.parseSpeed_m_s(QStringLiteral("25 mph")), 11.176, 1e-9);
    EXPECT_NEAR(*kBritish.parseSpeed_m_s(QStringLiteral("25")), 11.176, 1e-9);
    EXPECT_NEAR(*kGerman.parseSpeed_m_s(QStringLiteral("90 km/h")), 25.0, 1e-9);
    EXPECT_NEAR(*kGerman.parseSpeed_m_s(QStringLiteral("25 m/s")), 25.0, 1e-9);
    EXPECT_NEAR(*kGerman.parseSpeed_m_s(QStringLiteral("10 kn")), 5.144444, 1e-6);
}

// Closed form: 1 psi is 6894.757 Pa, 1 in³ 16.387064 cm³, 1 lb/ft³ 16.018463 kg/m³.
TEST(Units, ShowWhatAnEngineerReads)
{
    const auto shown = [](QString text) {
        return text.replace(QChar::Nbsp, QLatin1Char(' ')).toStdString();
    };
    EXPECT_EQ(shown(kBritish.stress(13.73e6)), "13.7 MPa");
    EXPECT_EQ(shown(kAmerican.stress(13.73e6)), "1990 psi");
    EXPECT_EQ(shown(kBritish.sectionModulus(2.694e-4)), "269 cm³");
    EXPECT_EQ(shown(kAmerican.sectionModulus(2.694e-4)), "16.4 in³");
    EXPECT_EQ(shown(kBritish.density(1.2254)), "1.23 kg/m³");
    EXPECT_EQ(shown(kAmerican.density(1.225)), "0.0765 lb/ft³");
}

TEST(Units, ShowAndReadTemperatures)
{
    EXPECT_EQ(kGerman.temperature(-4.6), QStringLiteral("-5\u00a0°C"));
    EXPECT_EQ(kAmerican.temperature(5.0), QStringLiteral("41\u00a0°F"));
    for (const char* text : {"5 °C", "5 C", "5c", "41 F", "41°f", "5 °c"})
        EXPECT_NEAR(*kBritish.parseTemperature_C(QString::fromUtf8(text)), 5.0, 1e-9) << text;
    EXPECT_NEAR(*kAmerican.parseTemperature_C(QStringLiteral("41")), 5.0, 1e-9);
    EXPECT_NEAR(*kGerman.parseTemperature_C(QStringLiteral("-5")), -5.0, 1e-9);
    EXPECT_NEAR(*kGerman.parseTemperature_C(QStringLiteral("5°")), 5.0, 1e-9);
    for (const char* text : {"", "C", "warm", "5 K", "5 5 C"})
        EXPECT_FALSE(kGerman.parseTemperature_C(QString::fromUtf8(text))) << text;
}

TEST(Units, ReadBackWhatTheyShow)
{
    for (const Units* units : {&kAmerican, &kBritish, &kGerman}) {
        const std::string name = units->locale().name().toStdString();
        EXPECT_NEAR(*units->parseLength_m(units->length(2.43)), 2.43, 0.0127) << name;
        EXPECT_NEAR(*units->parseLength_m(units->length(-1.2)), -1.2, 0.0127) << name;
        EXPECT_NEAR(*units->parseDiameter_m(units->diameter(0.083)), 0.083, 0.0013) << name;
        EXPECT_NEAR(*units->parseMass_kg(units->mass(2345)), 2345, 5) << name;
        EXPECT_NEAR(*units->parseSpeed_m_s(units->speed(25)), 25, 0.25) << name;
        EXPECT_NEAR(*units->parseShare(units->share(0.231)), 0.23, 0.005) << name;
    }
}

TEST(Units, RefuseWhatIsNoMeasure)
{
    for (const char* text : {"", "m", "two m", "2 miles", "2 in 8 ft", "2 m 3", "1/0 in", "2..4 m",
                             "1e3 m", "inf", "nan m", "2 kg", "--2 m"})
        EXPECT_FALSE(kBritish.parseLength_m(QString::fromUtf8(text))) << text;
}

} // namespace
} // namespace app
