#include "app/document/new_photo.hpp"

#include "app/store/picture.hpp"

#include <QCoreApplication>
#include <QCryptographicHash>
#include <QFile>
#include <QFileInfo>

namespace app {
namespace {

constexpr qsizetype kStem = 40; // letters of the file's own name that are kept

QString wordsOf(const char* sentence)
{
    return QCoreApplication::translate("NewPhoto", sentence);
}

/// A name that every file system takes.
QString plainStem(const QString& path)
{
    QString plain;
    for (const QChar letter : QFileInfo(path).completeBaseName().toLower())
        if (letter.isLetterOrNumber())
            plain += letter;
        else if (!plain.isEmpty() && !plain.endsWith(QLatin1Char('-')))
            plain += QLatin1Char('-');
    plain = plain.left(kStem);
    while (plain.endsWith(QLatin1Char('-')))
        plain.chop(1);
    return plain.isEmpty() ? QStringLiteral("photo") : plain;
}

std::string nameOf(const QString& path, const QByteArray& bytes, const QByteArray& format)
{
    const auto hash = QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex().left(8);
    const QString ending = QString::fromLatin1(format == "jpeg" ? QByteArray("jpg") : format);
    return QStringLiteral("photos/%1-%2.%3")
        .arg(plainStem(path), QString::fromLatin1(hash), ending)
        .toStdString();
}

} // namespace

NewPhoto readNewPhoto(const QString& path)
{
    NewPhoto photo;
    const QString shown = QFileInfo(path).fileName();
    QFile file(path);
    if (!QFileInfo(path).isFile() || !file.open(QIODevice::ReadOnly)) {
        photo.problem = wordsOf("%1 can't be read: is it still there?").arg(shown);
        return photo;
    }
    if (file.size() > kMostPhotoBytes) {
        photo.problem =
            wordsOf("%1 is larger than 40 MB. Save it smaller, and add that.").arg(shown);
        return photo;
    }
    photo.bytes = file.readAll();
    const QByteArray format = pictureFormat(photo.bytes);
    if (format.isEmpty() || pictureOf(photo.bytes, 16).isNull()) {
        photo.problem =
            wordsOf("%1 is no picture that can be shown here. Save it as JPEG or PNG, and "
                    "add that.")
                .arg(shown);
        photo.bytes.clear();
        return photo;
    }
    photo.name = nameOf(path, photo.bytes, format);
    return photo;
}

} // namespace app
