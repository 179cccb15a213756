#pragma once

#include <QString>

namespace app {

/// Plain text for a terminal or a printer: headings, paragraphs and lists, no line longer than
/// `width` letters unless a single word is.
class TextPage {
public:
    explicit TextPage(int width = 80) : width_(width) {}

    void title(const QString& text);     ///< underlined twice
    void heading(const QString& text);   ///< underlined once
    void paragraph(const QString& text); ///< from the margin
    void bullet(const QString& text);
    void numbered(int number, const QString& text);
    void below(const QString& text); ///< a remark under a numbered item
    void row(const QString& line);   ///< of a table: as it is, never wrapped
    void gap();                      ///< one empty line, never two

    [[nodiscard]] QString text() const;

private:
    void wrapped(const QString& text, const QString& first, const QString& others);

    int width_;
    QString text_;
};

} // namespace app
