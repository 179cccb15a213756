#include "app/words/fault_words.hpp"

#include "app/language/language.hpp"
#include "app/words/fault_phrases.hpp"
#include "model/document/garden_json.hpp"
#include "model/escaped.hpp"

#include <QCoreApplication>
#include <QDir>
#include <QLocale>
#include <QRegularExpression>
#include <QSet>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <fstream>

namespace app {
namespace {

using Json = nlohmann::json;
using Pointer = Json::json_pointer;

std::string contents(const QString& file)
{
    std::ifstream stream(file.toStdString(), std::ios::binary);
    return {std::istreambuf_iterator<char>(stream), {}};
}

QString broken(const char* pattern = "")
{
    return QStringLiteral(UNDERBOUGH_TESTS "/broken/") + QLatin1String(pattern);
}

QString text(const std::string& english)
{
    return QString::fromStdString(english);
}

/// What stands in no quotes: our words, not the person's.
QString unquoted(QString words)
{
    return words.remove(QRegularExpression(QStringLiteral("\".*\"")));
}

/// Of at least three letters, but for those that German has too, and the names of fields.
QSet<QString> englishWords(const QString& english)
{
    static const auto shared =
        QStringLiteral("NaN UTF true false null parent mol uXXXX Underbough SQLite docs "
                       "garden.schema.json")
            .split(QLatin1Char(' '));
    static const QRegularExpression word(QStringLiteral("[A-Za-z][A-Za-z_.]*[A-Za-z]"));
    QSet<QString> words;
    for (auto all = word.globalMatch(unquoted(english)); all.hasNext();) {
        const QString found = all.next().captured();
        if (found.size() > 2 && !found.contains(QLatin1Char('_')) && !shared.contains(found))
            words.insert(found);
    }
    return words;
}

/// Sorted as texts.
std::string figures(const QString& words)
{
    static const QRegularExpression figure(QStringLiteral("[0-9]+(?:[.,][0-9]+)?"));
    QStringList found;
    for (auto all = figure.globalMatch(words); all.hasNext();)
        found += all.next().captured().replace(QLatin1Char(','), QLatin1Char('.'));
    found.sort();
    return found.join(QLatin1Char(' ')).toStdString();
}

class GermanFaults : public testing::Test {
protected:
    GermanFaults() { speak(QLocale(QLocale::German)); }
    ~GermanFaults() override { speak(QLocale::c()); }
    GermanFaults(const GermanFaults&) = delete;
    GermanFaults& operator=(const GermanFaults&) = delete;

    static void expectGerman(const std::string& english)
    {
        const QString german = faultWords(english);
        told_.insert(text(english));
        EXPECT_EQ(figures(german), figures(text(model::escaped(english)))) << german.toStdString();
        if (english.starts_with("one of the words ")) { // they are what the document may hold
            EXPECT_TRUE(german.startsWith(QStringLiteral("eines der Wörter ")));
            return;
        }
        const auto left = englishWords(text(english)) & englishWords(german);
        EXPECT_TRUE(left.isEmpty()) << english << "\n" << german.toStdString();
        if (!englishWords(text(english)).isEmpty()) {
            EXPECT_NE(german.toStdString(), english);
        }
    }

    static void expectGerman(const model::Fault& fault)
    {
        expectGerman(fault.found);
        expectGerman(fault.expected);
        EXPECT_TRUE(faultLine(fault).startsWith(text(fault.pointer)));
        EXPECT_TRUE(faultLine(fault).contains(faultWords(fault.expected)));
        EXPECT_TRUE(faultLine(fault).contains(faultWords(fault.found)));
    }

    static inline QSet<QString> told_;

private:
    int count_{1};
    std::string name_{"test"};
    std::array<char*, 2> arguments_{name_.data(), nullptr};
    QCoreApplication application_{count_, arguments_.data()};
};

/// Every value of a document, the document itself apart.
void gather(const Json& value, const Pointer& at, std::vector<Pointer>& into)
{
    if (!value.is_structured())
        return;
    for (const auto& [key, item] : value.items()) {
        const auto place = value.is_array() ? at / std::stoul(key) : at / key;
        into.push_back(place);
        gather(item, place, into);
    }
}

/// What may stand in the place of a value: too much, too little, another kind, far too many.
std::vector<Json> wrong(const Json& right)
{
    std::vector<Json> values{1e9,
                             -1e9,
                             2.5,
                             nullptr,
                             true,
                             "",
                             "x",
                             Json::array(),
                             Json::object(),
                             "2023-02-30",
                             "1700-01-01",
                             "02-31",
                             std::string(10'001, 'x'),
                             "two\nlines"};
    if (!right.is_array() || right.empty())
        return values;
    Json many = right;
    while (many.size() <= 1000)
        many.push_back(right.front());
    values.push_back(std::move(many));
    values.push_back(Json::array({right.front()}));
    return values;
}

TEST(FaultWords, AreTheModelsOwnInEnglish)
{
    const QDir folder(broken());
    for (const auto& file : folder.entryList({QStringLiteral("*.json")}))
        for (const auto& fault : model::readGarden(contents(folder.filePath(file))).faults) {
            EXPECT_EQ(faultLine(fault).toStdString(), model::oneLine(fault));
            EXPECT_EQ(faultWords(fault.expected).toStdString(), fault.expected);
        }
}

TEST_F(GermanFaults, TellEachBrokenGarden)
{
    const QDir folder(broken());
    const auto files = folder.entryList({QStringLiteral("*.json")});
    EXPECT_GT(files.size(), 90);
    for (const auto& file : files)
        for (const auto& fault : model::readGarden(contents(folder.filePath(file))).faults) {
            SCOPED_TRACE(file.toStdString());
            expectGerman(fault);
            EXPECT_NE(faultLine(fault).toStdString(), model::oneLine(fault));
        }
}

// Each value of a whole garden is put wrong in every way, and taken away.
TEST_F(GermanFaults, TellWhateverIsWrongWithAGarden)
{
    const Json whole = Json::parse(contents(broken("whole.json")));
    std::vector<Pointer> places;
    gather(whole, Pointer(), places);
    told_.clear();
    const auto hold = [](const Json& garden, const Pointer& place) {
        for (const auto& fault : model::readGarden(garden.dump()).faults) {
            if (told_.contains(text(fault.found)) && told_.contains(text(fault.expected)))
                continue;
            SCOPED_TRACE(place.to_string());
            expectGerman(fault);
        }
    };
    for (const auto& place : places) {
        for (const auto& value : wrong(whole[place])) {
            Json garden = whole;
            garden[place] = value;
            hold(garden, place);
        }
        Json garden = whole;
        garden[place.parent_pointer()].is_object()
            ? static_cast<void>(garden[place.parent_pointer()].erase(place.back()))
            : garden[place.parent_pointer()].erase(std::stoul(place.back()));
        hold(garden, place);
    }
    EXPECT_GT(told_.size(), 150);
}

// A phrase that a more general one before it takes would never be said.
TEST_F(GermanFaults, EachPhraseIsFound)
{
    for (const char* phrase : faultPhrases()) {
        const auto filled = [](QString said) {
            for (int place = 1; place <= 4; ++place)
                said.replace(QStringLiteral("%L%1").arg(place), QString::number(70 + place))
                    .replace(QLatin1Char('%') + QString::number(place),
                             QStringLiteral("\"%1\"").arg(place));
            return said;
        };
        const auto english = filled(QString::fromUtf8(phrase)).toStdString();
        const QString german = filled(QCoreApplication::translate("Words", phrase));
        EXPECT_EQ(faultWords(english).toStdString(), german.toStdString()) << phrase;
    }
}

TEST_F(GermanFaults, KeepWhatPeopleWrote)
{
    const auto told = [](const char* english) { return faultWords(english).toStdString(); };
    EXPECT_EQ(told("\"a month from 1 to 12\""), "\"a month from 1 to 12\"");
    EXPECT_EQ(told("\"a list\" a second time"), "\"a list\" zum zweiten Mal");
    EXPECT_EQ(told("\"a\" from \"b\" from \"a\""), "\"a\" aus \"b\" aus \"a\"");
    EXPECT_EQ(told("\"%1 %2\"; is this a garden document?"),
              "\"%1 %2\"; ist das ein Gartendokument?");
    EXPECT_EQ(told("of limbs \"a day\" (oak)"), "\"a day\" von oak (Äste)");
    EXPECT_EQ(told("something that nobody foresaw"), "something that nobody foresaw");
}

TEST_F(GermanFaults, SayFiguresAsGermanDoes)
{
    EXPECT_EQ(faultWords("a share from 0 to 0.95").toStdString(), "ein Anteil, von 0 bis 0,95");
    EXPECT_EQ(faultLine({"/trees/0", "0.5", "a whole number"}).toStdString(),
              "/trees/0: gefunden: 0,5; nötig: eine ganze Zahl");
}

} // namespace
} // namespace app
