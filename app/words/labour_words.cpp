#include "app/words/labour_words.hpp"

#include "app/words/finding_list.hpp"

#include <algorithm>

namespace app {

using model::advice::Finding;

QString whoWords(model::advice::Who who)
{
    switch (who) {
    case model::advice::Who::oneself:
        return Words::tr("Do it yourself, with someone in sight and call");
    case model::advice::Who::withHelper:
        return Words::tr("Do it with a helper");
    case model::advice::Who::arborist:
        return Words::tr("Hire a certified arborist");
    }
    return {};
}

QStringList reasons(const model::advice::Labour& labour, const Wording& wording)
{
    std::vector<Finding> sorted = labour.findings;
    std::stable_sort(sorted.begin(), sorted.end(),
                     [](const Finding& a, const Finding& b) { return a.severity > b.severity; });
    return sentences(sorted, wording);
}

} // namespace app
