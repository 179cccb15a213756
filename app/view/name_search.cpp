#include "app/view/name_search.hpp"

#include <algorithm>

namespace app {
namespace {

constexpr int kNoMatch = 9;

QString plainLetters(const QString& text)
{
    QString plain;
    for (const QChar letter : text.normalized(QString::NormalizationForm_KD))
        if (letter.category() != QChar::Mark_NonSpacing)
            plain += letter.toLower();
    return plain;
}

bool startsWord(const QString& name, const QString& part)
{
    for (qsizetype at = name.indexOf(part); at >= 0; at = name.indexOf(part, at + 1))
        if (at == 0 || !name[at - 1].isLetterOrNumber())
            return true;
    return false;
}

/// 0 best.
int rank(const QString& entry, const QStringList& parts, const QString& whole)
{
    for (const auto& name : entry.split(QLatin1Char('\n')))
        if (name.startsWith(whole))
            return 0;
    int worst = 1;
    for (const auto& part : parts) {
        if (!entry.contains(part))
            return kNoMatch;
        if (!startsWord(entry, part))
            worst = 2;
    }
    return worst;
}

} // namespace

std::vector<std::size_t> searchNames(const QStringList& names, const QString& typed,
                                     std::size_t most)
{
    const QString whole = plainLetters(typed.simplified());
    const QStringList parts = whole.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    std::vector<std::pair<int, std::size_t>> ranked;
    for (qsizetype i = 0; i < names.size(); ++i) {
        const int fit = rank(plainLetters(names[i]), parts, whole);
        if (fit != kNoMatch)
            ranked.emplace_back(fit, static_cast<std::size_t>(i));
    }
    std::ranges::stable_sort(ranked, {}, &std::pair<int, std::size_t>::first);
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < std::min(most, ranked.size()); ++i)
        found.push_back(ranked[i].second);
    return found;
}

} // namespace app
