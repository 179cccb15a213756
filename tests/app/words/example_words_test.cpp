#include "app/words/example_words.hpp"

#include "app/language/language.hpp"

#include <QCoreApplication>

#include <gtest/gtest.h>

namespace app {
namespace {

model::Garden smallExample()
{
    model::Garden garden;
    garden.name = "Quarry Bend, front garden";
    garden.strips.resize(1);
    garden.strips[0].id = "drive";
    garden.strips[0].name = "drive";
    garden.trees.resize(1);
    garden.trees[0].name = "a tree that no example has";
    garden.trees[0].limbs.resize(1);
    garden.trees[0].limbs[0].id = "drive-limb";
    garden.trees[0].limbs[0].name = "drive limb";
    return garden;
}

TEST(ExampleWords, NamesComeInTheLanguageSpokenAndIdsStay)
{
    int argc = 0;
    const QCoreApplication application(argc, nullptr);
    auto garden = smallExample();
    translateExample(garden);
    EXPECT_EQ(garden, smallExample()); // English, until another language is spoken
    speak(QLocale(QLocale::German));
    translateExample(garden);
    speak(QLocale::c());
    EXPECT_EQ(garden.strips[0].name, "Zufahrt");
    EXPECT_EQ(garden.strips[0].id, "drive");
    EXPECT_EQ(garden.trees[0].limbs[0].name, "Zufahrtsast");
    EXPECT_EQ(garden.trees[0].limbs[0].id, "drive-limb");
    EXPECT_EQ(garden.trees[0].name, "a tree that no example has");
    EXPECT_EQ(garden.name, "Quarry Bend, Vorgarten");
}

} // namespace
} // namespace app
