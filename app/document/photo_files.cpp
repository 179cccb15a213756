#include "app/document/photo_files.hpp"

#include "model/document/fields.hpp"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

#include <set>

namespace app {
namespace {

/// Walks the document's form (model/document/fields.hpp), so that photos are found wherever a
/// garden has them.
class PhotoNames {
public:
    explicit PhotoNames(std::set<std::string>& names) : names_(names) {}

    void constant(std::string_view, std::string_view) {}
    void version(std::string_view, int) {}
    template <typename Member>
    void required(std::string_view, const Member& member)
    {
        look(member);
    }
    template <typename Member>
    void defaulted(std::string_view, const Member& member)
    {
        look(member);
    }
    template <typename Member>
    void blank(std::string_view, const std::optional<Member>& member)
    {
        if (member)
            look(*member);
    }
    template <typename Item>
    void list(std::string_view, const std::vector<Item>& items)
    {
        look(items);
    }
    void extras(const model::Extras&) {}

private:
    void look(const model::Photo& photo) { names_.insert(photo.file); }
    template <typename Item>
    void look(const std::vector<Item>& items)
    {
        for (const auto& item : items)
            look(item);
    }
    template <typename Member>
    void look(const Member& member)
    {
        if constexpr (requires { model::fields(*this, member); })
            model::fields(*this, member);
    }

    std::set<std::string>& names_;
};

QString beside(const QString& document, const std::string& name)
{
    return QFileInfo(document).dir().filePath(QString::fromStdString(name));
}

} // namespace

std::vector<std::string> photosOf(const model::Garden& garden)
{
    std::set<std::string> names;
    PhotoNames visitor(names);
    model::fields(visitor, garden);
    return {names.begin(), names.end()};
}

QByteArray readPhotoFile(const QString& document, const std::string& name)
{
    QFile file(beside(document, name));
    if (!QFileInfo(file).isFile() || !file.open(QIODevice::ReadOnly))
        return {};
    const QByteArray bytes = file.readAll();
    return file.error() == QFileDevice::NoError ? bytes : QByteArray();
}

QString writePhotoFile(const QString& document, const std::string& name, const QByteArray& bytes)
{
    const QString path = beside(document, name);
    if (QFileInfo::exists(path)) {
        if (readPhotoFile(document, name) == bytes)
            return {};
        return QCoreApplication::translate(
                   "PhotoFiles", "%1 was not written: there is another file of that name.")
            .arg(QDir::toNativeSeparators(path));
    }
    QSaveFile file(path);
    if (QFileInfo(path).dir().mkpath(QStringLiteral(".")) && file.open(QIODevice::WriteOnly) &&
        file.write(bytes) == bytes.size() && file.commit())
        return {};
    return QCoreApplication::translate("PhotoFiles", "%1 was not written: %2.")
        .arg(QDir::toNativeSeparators(path), file.errorString());
}

} // namespace app
