#include "app/document/file_sentences.hpp"

#include "app/words/fault_place.hpp"
#include "app/words/fault_words.hpp"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <QStringList>

#include <algorithm>

namespace app {
namespace {

QString say(const char* sentence, int count = -1)
{
    return QCoreApplication::translate("GardenFile", sentence, nullptr, count);
}

QString shown(const QString& path)
{
    return QDir::toNativeSeparators(path);
}

const char* reasonOf(StoreError::Kind kind)
{
    using Kind = StoreError::Kind;
    switch (kind) {
    case Kind::missing:
        return QT_TRANSLATE_NOOP("GardenFile",
                                 "it is no longer there (was it moved, or its disk taken away?)");
    case Kind::full:
        return QT_TRANSLATE_NOOP("GardenFile", "the disk is full");
    case Kind::readOnly:
        return QT_TRANSLATE_NOOP("GardenFile", "the file or its folder can't be written");
    case Kind::busy:
        return QT_TRANSLATE_NOOP("GardenFile", "another program is writing it");
    case Kind::changed:
        return QT_TRANSLATE_NOOP("GardenFile",
                                 "another program changed it after it was opened here");
    case Kind::damaged:
        return QT_TRANSLATE_NOOP("GardenFile", "it is damaged");
    case Kind::foreign:
    case Kind::newer:
    case Kind::unfit:
    case Kind::failed:
        return nullptr;
    }
    return nullptr;
}

} // namespace

QString notReadSentence(const QString& path, const std::vector<model::Fault>& faults,
                        const QByteArray& document)
{
    const auto first = placedFaultLine(faults.front(), document);
    if (faults.size() == 1)
        return say(QT_TRANSLATE_NOOP("GardenFile", "%1 can't be used. %2."))
            .arg(shown(path), first);
    return say(QT_TRANSLATE_N_NOOP("GardenFile", "%1 can't be used. %2, and %n more."),
               static_cast<int>(faults.size()) - 1)
        .arg(shown(path), first);
}

QString notWrittenSentence(const QString& path, const StoreError& error)
{
    const char* reason = reasonOf(error.kind());
    return say(QT_TRANSLATE_NOOP("GardenFile", "%1 was not saved: %2. Your garden is still here; "
                                               "save it under another name, or "
                                               "try again once that is mended."))
        .arg(shown(path), reason ? say(reason) : faultLine(error.faults().front()));
}

QString openElsewhereSentence(const QString& path)
{
    return say(QT_TRANSLATE_NOOP("GardenFile", "%1 is open in another window: here it is only "
                                               "shown. Change it there, or save it "
                                               "here under another name."))
        .arg(shown(path));
}

QString readOnlySentence(const QString& path)
{
    return say(QT_TRANSLATE_NOOP("GardenFile", "%1 can't be written. What you change is kept in "
                                               "this window only: save it under "
                                               "another name."))
        .arg(shown(path));
}

QString raisedSentence(const QString& path, const QString& copy)
{
    return say(QT_TRANSLATE_NOOP(
                   "GardenFile",
                   "%1 was brought to this program's form. As it was, it is kept in %2."))
        .arg(shown(path), QFileInfo(copy).fileName());
}

QString recoverySummary(const Recovery& recovery)
{
    constexpr std::size_t kTold = 3;
    QStringList read;
    const auto tell = [&read](const char* what, std::size_t count) {
        if (count > 0)
            read += say(what).arg(count);
    };
    tell(QT_TRANSLATE_NOOP("GardenFile", "trees: %1"), recovery.trees);
    tell(QT_TRANSLATE_NOOP("GardenFile", "limbs: %1"), recovery.limbs);
    tell(QT_TRANSLATE_NOOP("GardenFile", "visits: %1"), recovery.visits);
    tell(QT_TRANSLATE_NOOP("GardenFile", "other things: %1"), recovery.things);
    tell(QT_TRANSLATE_NOOP("GardenFile", "photos: %1"), recovery.photos);
    tell(QT_TRANSLATE_NOOP("GardenFile", "doubtful: %1"), recovery.doubtful);
    const QString text = read.join(QStringLiteral(", "));
    if (recovery.lost.empty())
        return text;
    QStringList lost;
    for (std::size_t i = 0; i < std::min(kTold, recovery.lost.size()); ++i)
        lost += faultWords(recovery.lost[i]);
    const QString told = lost.join(QStringLiteral(", "));
    if (recovery.lost.size() <= kTold)
        return say(QT_TRANSLATE_NOOP("GardenFile", "%1; lost: %2")).arg(text, told);
    return say(QT_TRANSLATE_NOOP("GardenFile", "%1; lost: %2 and %3 more"))
        .arg(text, told, QString::number(recovery.lost.size() - kTold));
}

QString recoveredSentence(const QString& path, const QString& to, const Recovery& recovery)
{
    return say(QT_TRANSLATE_NOOP("GardenFile", "%1 is damaged and was left alone. What could be "
                                               "read of it is open now, in %2: %3."))
        .arg(shown(path), QFileInfo(to).fileName(), recoverySummary(recovery));
}

QString withoutPhotosSentence(const QString& path, int missing)
{
    return say(QT_TRANSLATE_N_NOOP(
                   "GardenFile",
                   "%1 was saved, but %n photos could not be found and are not in it."),
               missing)
        .arg(shown(path));
}

} // namespace app
