#include "app/words/limb_words.hpp"
#include "app/words/sketch_words.hpp"
#include "app/words/step_words.hpp"
#include "tests/app/words/told_garden.hpp"

#include <gtest/gtest.h>

#include <set>

namespace app {
namespace {

using model::SketchCause;
using model::load::Quantity;

const Units kMetric{QLocale(QStringLiteral("en_GB")), Measures::metric};

std::string shown(QString text)
{
    return text.replace(QChar::Nbsp, QLatin1Char(' ')).toStdString();
}

model::SketchCheck check()
{
    model::SketchCheck made;
    made.stemDiameter_m = 0.30;
    made.dryMass_kg = {900.0, 300.0, 150.0, 600.0, "a"};
    made.leafArea_m2 = {100.0, 150.0, 50.0, 450.0, "b"};
    made.leafMass_kg = {7.5, 11.0, 3.0, 40.0, "c"};
    made.crownSpread_m = {8.0, 8.1, 5.5, 11.8, "d"};
    return made;
}

TEST(SketchWords, SayWhatIsOddAndWhatToLookAtAgain)
{
    auto made = check();
    EXPECT_TRUE(sketchDoubts(made, kMetric).isEmpty());
    made.causes = {SketchCause::limbsThick};
    ASSERT_EQ(sketchDoubts(made, kMetric).size(), 1);
    const auto text = shown(sketchDoubts(made, kMetric).front());
    EXPECT_NE(text.find("a stem 30 cm thick weigh 150 kg to 600 kg dry, the sketch 900 kg"),
              std::string::npos)
        << text;
    EXPECT_NE(text.find("tape the thickest"), std::string::npos) << text;
}

TEST(SketchWords, HaveASentenceOfItsOwnForEachCause)
{
    std::set<std::string> sentences;
    const SketchCause kAll[] = {SketchCause::girthSmall, SketchCause::girthLarge,
                                SketchCause::limbsThick, SketchCause::limbsThin,
                                SketchCause::crownWide,  SketchCause::crownNarrow,
                                SketchCause::leafDense,  SketchCause::leafSparse};
    for (const auto cause : kAll)
        sentences.insert(shown(sketchDoubt(check(), cause, kMetric)));
    EXPECT_EQ(sentences.size(), std::size(kAll));
}

// Every step of the chain has a name of its own and stands in one of the four parts, in order.
TEST(StepWords, NameEveryStep)
{
    std::set<std::string> names;
    auto part = StepPart::wind;
    for (int i = 0; i <= static_cast<int>(Quantity::utilisation); ++i) {
        const auto quantity = static_cast<Quantity>(i);
        names.insert(shown(stepName(quantity)));
        EXPECT_GE(partOf(quantity), part) << i;
        part = partOf(quantity);
        EXPECT_FALSE(stepValue({quantity, 0.5, "", ""}, kMetric).isEmpty()) << i;
    }
    EXPECT_EQ(names.size(), static_cast<std::size_t>(Quantity::utilisation) + 1);
    EXPECT_EQ(shown(stepValue({Quantity::windForce, 1042.0, "", ""}, kMetric)), "1.04 kN");
    EXPECT_EQ(shown(stepValue({Quantity::principalStress, 13.73e6, "", ""}, kMetric)), "13.7 MPa");
    EXPECT_EQ(shown(stepValue({Quantity::strength, 0.0, "", ""}, kMetric)), "none is counted on");
}

TEST(LimbWords, ALimbDrawnHereIsCalledByItsNumberAndOthersByTheirId)
{
    EXPECT_EQ(limbIdWords("limb-12"), QStringLiteral("limb 12"));
    for (const char* id : {"limb-12-a", "old-limb-3", "limb-", "stem"})
        EXPECT_EQ(limbIdWords(id), QLatin1String(id));
}

} // namespace
} // namespace app
