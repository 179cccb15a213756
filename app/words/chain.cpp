#include "app/words/chain.hpp"

namespace app {

QString originWords(const QString& formula, const std::string& source,
                    const model::Sources& sources)
{
    QStringList parts;
    if (!formula.isEmpty())
        parts << formula;
    if (!source.empty()) {
        const auto found = sources.find(source);
        parts << QString::fromStdString(found == sources.end() ? source : found->second);
    }
    return parts.join(QStringLiteral("; "));
}

} // namespace app
