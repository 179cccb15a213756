"""Makes docs/validation.md and its plots from what the tests' checks against the outside have left.

usage: validation.py PROJECT_FOLDER FOLDER_OF_RECORDS [--write]

Without --write it holds the page and the plots against what they would be made to today. A figure
may differ by one in its last printed digit, for machines round differently.

The source of a check is the comment above its test ("Published: ...", "Closed form: ...", "Brute
force: ...", "Outside: ..."), so that it is written once; tests/outside/outside_check.hpp makes the
records. A test of that kind that leaves no figure is listed by its sentence.
"""

import ast
import json
import pathlib
import re
import sys

sys.dont_write_bytecode = True  # the source folder stays clean
from plot import plot  # noqa: E402
from test_sources import KIND, tests_of  # noqa: E402

GROUPS = [
    ("model/load", "Wind, loads, sag and breaking"),
    ("model/examples", "Whole trees"),
    ("model/crown", "Leaf and wood of a crown"),
    ("model/species", "Tables of species"),
    ("model/light", "Sun, sky and shade"),
    ("model/headroom", "Headroom"),
    ("model/sketch", "Measuring and sketching"),
    ("model/growth", "Regrowth"),
    ("model/diary", "Diary: seasons and wounds"),
    ("model/advice", "Rules and the search for cuts"),
    ("model/assessment", "Explanations"),
    ("model/garden", "Garden and ground"),
    ("model/geometry", "Geometry"),
    ("app", "The program around the model"),
]
LISTED_CASES = 12  # of one check; of more only the worst is shown
EXACT = 1e-9  # a tolerance below this share of the figure leaves room for rounding alone
LITTLE = 0.02  # of the tolerance: what a figure is off by there may be rounding, so it isn't told


def is_there(project, record):
    """Whether the check still stands where it left the record: folders keep what old builds left."""
    source = project / record["file"]
    if not source.exists():
        return False
    lines = source.read_text().splitlines()
    return "OUTSIDE_" in " ".join(lines[max(0, record["line"] - 6):record["line"]])


def records_of(project, folder):
    """What the tests have left: for each test the checks by line, each with its cases."""
    found = {}
    for path in sorted(folder.glob("*.jsonl")):
        for line in path.read_text().splitlines():
            record = json.loads(line)
            if not is_there(project, record):
                break
            suite, name = record["test"].split(".", 1)
            # Instances of a test with a parameter: "Table/Suite.Name/0".
            parts = suite.split("/")
            test = parts[-1] + "." + name.split("/")[0]
            checks = found.setdefault((record["file"], test), {})
            checks.setdefault(record["line"], []).append(record)
    return found


def error_of(record):
    return record["computed"] - record["expected"]


def is_exact(record):
    return record["tolerance"] <= EXACT * max(1.0, abs(record["expected"]))


def share_of(record):
    """The error as a share of the tolerance, with its sign; LITTLE of it counts as nothing."""
    if is_exact(record) or record["tolerance"] == 0.0:
        return 0.0
    share = round(error_of(record) / record["tolerance"], 3)
    return share if abs(share) >= LITTLE else 0.0


def shown_cases(cases):
    """Every case of a check, or of many the worst, with how many there are."""
    if len(cases) <= LISTED_CASES:
        return [(case, 1) for case in cases]
    worst = cases[0]
    for case in cases[1:]:
        if abs(share_of(case)) > abs(share_of(worst)) + 0.002:
            worst = case
    return [(worst, len(cases))]


def digits(value, tolerance):
    """A number to where its tolerance has two digits, and to seven at most."""
    if value == 0:
        return "0"
    if abs(value) >= 1e6 or abs(value) < 1e-3 and tolerance < 1e-3:
        return f"{value:.3e}".replace("e+0", "e").replace("e-0", "e-").replace("e+", "e")
    places = 6
    if tolerance > 0:
        places = max(0, min(6, -int(f"{tolerance:e}".split("e")[1]) + 1))
    whole = len(str(int(abs(value))))
    text = f"{value:.{max(0, min(places, 7 - whole))}f}"
    return text[1:] if text.startswith("-") and float(text) == 0 else text


def short(value):
    """A small number to two digits."""
    if value == 0:
        return "0"
    text = f"{value:.1e}"
    return f"{float(text):g}" if 1e-4 <= abs(value) < 1e6 else text.replace("e-0", "e-").replace(
        "e+0", "e")


def expected_words(record):
    if record["range"]:
        low = record["expected"] - record["tolerance"]
        high = record["expected"] + record["tolerance"]
        return f"{digits(low, record['tolerance'] / 10)} to {digits(high, record['tolerance'] / 10)}"
    return digits(record["expected"], record["tolerance"])


def cell(text):
    return text.replace("|", "\\|").replace("\n", " ")


def row(number, record, count):
    share = share_of(record)
    tolerance = record["tolerance"]
    case = cell(record["case"].strip())
    if count > 1:
        case = f"worst of {count}" + (f": {case}" if case else "")
    if record["range"]:
        error = "inside" if abs(share) <= 1 else "**outside**"
        tolerance_words = "the range"
    else:
        error = "rounding" if is_exact(record) else short(error_of(record)) if share else ""
        tolerance_words = short(tolerance)
    used = f"{round(100 * abs(share))} %" if share else f"under {round(100 * LITTLE)} %"
    computed = digits(record["computed"], tolerance / 10 if record["range"] else tolerance)
    return (f"| {number} | `{cell(record['what'])}` | {case} | {expected_words(record)} "
            f"| {computed} | {error} | {tolerance_words} | {used} |")


def tables_words(project, test):
    links = [f"[{name}](../tests/published/{name})" for name in dict.fromkeys(test.tables)
             if (project / "tests/published" / name).exists()]
    return f" Table: {', '.join(links)}." if links else ""


def test_lines(project, test, checks, number):
    """The part of the page for one test, and what the plot shows of it."""
    source = KIND.sub(lambda kind: f"**{kind.group()}**", test.source, count=1)
    lines = [f"### {test.sentence()}", "",
             f"{source}{tables_words(project, test)} "
             f"([{pathlib.PurePath(test.file).name}](../{test.file}))", "",
             "| no. | figure, as the test has it | case | expected | computed | error | tolerance "
             "| of it used |", "|---|---|---|---|---|---|---|---|"]
    marks = []
    for line in sorted(checks):
        for record, count in shown_cases(checks[line]):
            number += 1
            lines.append(row(number, record, count))
            marks.append((number, share_of(record), record["held"]))
    return lines + [""], marks, number


def group_lines(project, folder, title, tests, records):
    inside = f"tests/{folder}/"
    lines, marks, number = [], [], 0
    for key in sorted((k for k in records if k in tests and k[0].startswith(inside)),
                      key=lambda k: (k[0], tests[k].line)):
        if not KIND.search(tests[key].source):
            raise SystemExit(f"{key[0]}: {key[1]} checks against something outside; say above it "
                             "what that is (Published, Closed form, Brute force or Outside: ...)")
        more, seen, number = test_lines(project, tests[key], records[key], number)
        lines += more
        marks += seen
    if not marks:
        return [], None, []
    name = f"validation-{folder.split('/')[-1]}.svg"
    head = [f"## {title}", "",
            f"![{title}: error of each check as a share of its tolerance](pictures/{name})", ""]
    return head + lines, (name, plot(title, marks)), marks


def without_figure(tests, records):
    """Tests against the outside that hold a word, a date or an order, not a figure."""
    lines = []
    for key in sorted(tests, key=lambda k: (k[0], tests[k].line)):
        test = tests[key]
        if test.own and key not in records:
            lines.append(f"- {test.sentence()} "
                         f"([{pathlib.PurePath(test.file).name}](../{test.file})). {test.source}")
    return lines


def read_by_others(project):
    """The checks in Python: what the program writes, read by what shares no code with it."""
    lines = []
    for path in sorted((project / "tests").rglob("*_check.py")):
        if path.parent.name in ("docs", "house"):
            continue  # they read the sources
        words = (ast.get_docstring(ast.parse(path.read_text())) or "").split("\n\n")
        told = " ".join(part for part in words if "usage:" not in part and not part.startswith(" "))
        told = " ".join(told.split())
        file = path.relative_to(project).as_posix()
        lines.append(f"- [{path.name}](../{file}): {told}")
    return lines


def made(project, folder):
    """The page and the plots, by path."""
    tests = tests_of(project)
    records = records_of(project, folder)
    if not records:
        raise SystemExit(f"{folder} holds no records: run the tests first")
    body, files, all_marks, contents = [], {}, [], []
    for group, title in GROUPS:
        lines, picture, marks = group_lines(project, group, title, tests, records)
        if not picture:
            continue
        body += lines
        files[f"docs/pictures/{picture[0]}"] = picture[1]
        all_marks += marks
        anchor = re.sub(r"[^a-z0-9 -]", "", title.lower()).replace(" ", "-")
        worst = max((mark for mark in marks if mark[2]), key=lambda mark: abs(mark[1]))
        misses = [mark for mark in marks if abs(mark[1]) > 1]
        contents.append(f"| [{title}](#{anchor}) | {len(marks)} | {round(100 * abs(worst[1]))} % "
                        f"| {len(misses) or ''} |")
    misses = [mark for mark in all_marks if abs(mark[1]) > 1]
    head = (pathlib.Path(__file__).parent / "validation_head.txt").read_text()
    head = head.replace("{figures}", str(len(all_marks))).replace("{misses}", str(len(misses)))
    page = [head, "| group | figures | most of a tolerance used | published ranges missed |",
            "|---|---|---|---|", *contents, "", *body,
            "## Held without a figure", "",
            "These tests hold a word, a date, an order, a whole text or a drawing against their "
            "source.", "",
            *without_figure(tests, records), "",
            "## What the program writes, read by others", "", *read_by_others(project)]
    files["docs/validation.md"] = "\n".join(page) + "\n"
    return files


NUMBER = re.compile(r"(?<![\w.-])-?\d+(?:\.\d+)?(?:e-?\d+)?(?!\w)")


def same(old, new):
    """Whether two texts are alike up to one in the last digit of their numbers."""
    if NUMBER.sub("#", old) != NUMBER.sub("#", new):
        return False
    for a, b in zip(NUMBER.findall(old), NUMBER.findall(new)):
        step = max(last_digit(a), last_digit(b))
        if abs(float(a) - float(b)) > 1.01 * step:
            return False
    return True


def last_digit(number):
    """What one in the last digit of a printed number is worth; whole numbers must be the same."""
    mantissa, _, power = number.partition("e")
    places = len(mantissa.partition(".")[2])
    return 10.0 ** (int(power or 0) - places) if places else 0.0


def main():
    write = "--write" in sys.argv
    words = [word for word in sys.argv[1:] if word != "--write"]
    if len(words) != 2:
        raise SystemExit(__doc__)
    project, folder = pathlib.Path(words[0]), pathlib.Path(words[1])
    stale = False
    for name, text in made(project, folder).items():
        path = project / name
        if path.exists() and same(path.read_text(), text):
            continue
        if write:
            path.write_text(text)
            print(f"written: {name}")
        else:
            print(f"{name} is not what the tests give today")
            stale = True
    if stale:
        print(f"if that is meant: python3 tests/outside/validation.py . {folder} --write")
    return 1 if stale else 0


if __name__ == "__main__":
    sys.exit(main())
