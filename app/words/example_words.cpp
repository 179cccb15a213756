#include "app/words/example_words.hpp"

#include <QCoreApplication>

namespace app {
namespace {

void speak(std::string& words)
{
    if (!words.empty())
        words = exampleWords(words).toStdString();
}

void speakNames(auto& things)
{
    for (auto& thing : things)
        speak(thing.name);
}

void speakTree(model::Tree& tree)
{
    speakNames(tree.limbs);
    for (auto& limb : tree.limbs)
        for (auto& defect : limb.defects)
            speak(defect.note);
    for (auto& visit : tree.visits) {
        speak(visit.by);
        speak(visit.note);
    }
}

} // namespace

QString exampleWords(const std::string& english)
{
    return QCoreApplication::translate("Examples", english.c_str());
}

void translateExample(model::Garden& garden)
{
    speak(garden.name);
    speakNames(garden.trees);
    for (auto& tree : garden.trees)
        speakTree(tree);
    speakNames(garden.plantings);
    speakNames(garden.strips);
    speakNames(garden.structures);
    speakNames(garden.lines);
}

} // namespace app
