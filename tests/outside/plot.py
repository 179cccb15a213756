"""A plot of checks for docs/validation.md: each one's error as a share of its tolerance, as SVG."""

ROW = 13
ROWS = 40  # in a column
COLUMN = 250
LEFT = 40  # for the numbers
WIDE = 190  # from -100 % to 100 % and a little over
MOST = 1.25  # what misses by more stands at the rim


def across(share):
    return LEFT + WIDE / 2 * (1 + max(-MOST, min(MOST, share)) / MOST)


def text(x, y, words, anchor="middle"):
    return f'<text x="{x:.1f}" y="{y:.1f}" text-anchor="{anchor}">{words}</text>'


def mark(x, y, held, inside):
    """A dot; a ring where the source's range is told and not demanded; a cross where it misses."""
    if not inside:
        return (f'<path d="M{x - 4:.1f} {y - 4:.1f} l8 8 m0 -8 l-8 8" stroke="#000" '
                'stroke-width="2" fill="none"/>')
    fill = "#000" if held else "#fff"
    return f'<circle cx="{x:.1f}" cy="{y:.1f}" r="3.5" fill="{fill}" stroke="#000"/>'


def column(marks, left):
    """Up to ROWS checks below each other, between lines at 0 and at the tolerance."""
    high = 44 + ROW * len(marks)
    drawn = [f'<g transform="translate({left} 0)">']
    for share, words in ((-1.0, "−100 %"), (0.0, "0"), (1.0, "100 %")):
        x = across(share)
        drawn.append(f'<line x1="{x:.1f}" y1="40" x2="{x:.1f}" y2="{high}" stroke="#999"/>')
        drawn.append(text(x, 36, words))
    for place, (number, share, held) in enumerate(marks):
        y = 52 + ROW * place
        drawn.append(text(LEFT - 6, y + 4, number, "end"))
        drawn.append(f'<line x1="{across(0):.1f}" y1="{y}" x2="{across(share):.1f}" y2="{y}" '
                     'stroke="#000"/>')
        drawn.append(mark(across(share), y, held, abs(share) <= 1))
    return drawn + ["</g>"]


def plot(title, marks):
    """The picture for (number, share of the tolerance, held) of each check."""
    rows = ROWS if len(marks) <= 4 * ROWS else -(-len(marks) // 4)
    columns = [marks[at:at + rows] for at in range(0, len(marks), rows)]
    wide = max(2, len(columns)) * COLUMN + 20
    high = 90 + ROW * len(columns[0])
    drawn = [f'<svg xmlns="http://www.w3.org/2000/svg" width="{wide}" height="{high}" '
             'font-family="sans-serif" font-size="11">',
             f"<title>{title}: error of each check as a share of its tolerance</title>",
             f'<rect width="{wide}" height="{high}" fill="#fff"/>',
             text(10, 16, f"{title}: error as a share of the tolerance", "start")]
    for place, part in enumerate(columns):
        drawn += column(part, 10 + COLUMN * place)
    drawn.append(text(10, high - 12, "numbers as in the tables; ring: told, not demanded; cross: "
                      "outside the source’s range", "start"))
    return "\n".join(drawn + ["</svg>"]) + "\n"
