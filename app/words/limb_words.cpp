#include "app/words/limb_words.hpp"

#include <string_view>

namespace app {

QStringList vigourWords()
{
    return {Words::tr("Young: growing fast"), Words::tr("Mature"), Words::tr("Old: growing little"),
            Words::tr("Stressed: drought, wounds, poor leaf")};
}

QStringList protectionWords()
{
    return {Words::tr("Not known: ask the local authority"), Words::tr("Asked: not protected"),
            Words::tr("Protected by law, order or by-law")};
}

QStringList unionWords()
{
    return {Words::tr("Sound: a collar, wood to wood"),
            Words::tr("Codominant: two stems alike, no collar"),
            Words::tr("Included bark: bark pressed between")};
}

QStringList measuredWords()
{
    return {Words::tr("By tape"), Words::tr("By eye"), Words::tr("Guessed")};
}

QStringList defectWords()
{
    return {Words::tr("Hollow, closed"), Words::tr("Hollow with an opening"),
            Words::tr("Crack"),          Words::tr("Dead from here to the tip"),
            Words::tr("Broken here"),    Words::tr("Rubs: this one goes")};
}

QStringList densityWords()
{
    return {Words::tr("Sparse"), Words::tr("Medium"), Words::tr("Dense")};
}

QString limbIdWords(const std::string& id)
{
    // By hand: it is asked for every limb at every move of a drag.
    constexpr std::string_view kDrawn = "limb-";
    const bool isDrawn = id.starts_with(kDrawn) && id.size() > kDrawn.size() &&
                         id.find_first_not_of("0123456789", kDrawn.size()) == std::string::npos;
    if (!isDrawn)
        return QString::fromStdString(id);
    return Words::tr("limb %1", "a limb without a name, by its number")
        .arg(QString::fromStdString(id.substr(kDrawn.size())));
}

} // namespace app
