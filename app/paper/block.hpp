#pragma once

#include <QPainter>
#include <QSizeF>
#include <QString>
#include <QStringList>

#include <functional>
#include <variant>
#include <vector>

/// What stands on paper, said once for every form it is written in: PDF, HTML, pictures.
namespace app {

/// A drawing on a canvas of so many pixels.
struct Figure {
    QString name;    ///< of its file, without ending: "maple-cuts"
    QString caption; ///< under it
    QString spoken;  ///< for who can't see it
    QSizeF canvas;
    std::function<void(QPainter&)> paint; ///< font and scale are set
};

struct Title {
    QString text;
};
struct Heading {
    QString text;
};
struct Paragraph {
    QString text;
    bool strong{};
    bool leadsIn{}; ///< never parted from what follows
};
struct Bullet {
    QString text;
};

/// Rows are never split between pages; the head stands on each.
struct Table {
    QStringList head;              ///< empty: none
    std::vector<QStringList> rows; ///< each as long as `widths`; a line break starts a line
    std::vector<double> widths;    ///< shares of the page's width, sum 1
};

/// Side by side, as wide as the page together.
struct Figures {
    std::vector<Figure> figures;
};

/// Ruled lines to write on, to the foot of the page, at least so many.
struct NoteLines {
    int atLeast{};
};

/// A new page starts.
struct NewPage {};

using SheetBlock =
    std::variant<Title, Heading, Paragraph, Bullet, Table, Figures, NoteLines, NewPage>;

/// One paper: its pages carry the same foot and are counted together.
struct Sheet {
    QString title; ///< for the file's properties
    QString foot;  ///< tree, garden, date
    std::vector<SheetBlock> blocks;
    std::size_t mostPages{}; ///< letters shrink, to 70 % at the least, until it fits; 0: any
};

} // namespace app
