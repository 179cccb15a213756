#include "app/store/recover_garden.hpp"
#include "tests/fuzz/targets.hpp"

#include <QFile>
#include <QTemporaryDir>

namespace fuzz {
namespace {

/// Runs it; whether it was done and not refused.
template <typename Work>
bool done(const Work& work)
{
    try {
        work();
        return true;
    } catch (const app::StoreError& refusal) {
        for (const auto& fault : refusal.faults())
            hold(isOneLine(model::oneLine(fault)), "a garden file is refused in one line");
        return false;
    }
}

} // namespace

void gardenFile(std::string_view bytes)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("a.underbough"));
    const QString recovered = folder.filePath(QStringLiteral("b.underbough"));
    QFile file(path);
    hold(file.open(QIODevice::WriteOnly), "a file can be made");
    file.write(bytes.data(), static_cast<qint64>(bytes.size()));
    file.close();
    (void)app::isGardenStore(path);
    (void)done([&] { (void)app::loadGarden(path); });
    (void)done([&] {
        for (const auto& wrong : app::checkStore(path))
            hold(isOneLine(wrong), "what is wrong is said in one line each");
    });
    if (done([&] { (void)app::recoverGarden(path, recovered); }))
        hold(done([&] { (void)app::loadGarden(recovered); }), "what is recovered opens");
    QFile after(path);
    hold(after.open(QIODevice::ReadOnly) &&
             after.readAll() == QByteArray(bytes.data(), static_cast<qsizetype>(bytes.size())),
         "a file that is only read stays as it is");
}

} // namespace fuzz
