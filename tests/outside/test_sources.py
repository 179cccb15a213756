"""What the sources of the tests say of themselves: names, kinds of check, where a figure is from."""

import re

KIND = re.compile(r"(Published|Closed form|Brute force|Outside)\b")


class Test:
    """A test as its source has it: its sentence, its kind of check and where that comes from."""

    def __init__(self, name, file, line, source, tables):
        self.name, self.file, self.line, self.source, self.tables = name, file, line, source, tables

    def sentence(self):
        suite, name = (words_of(part) for part in self.name.split("."))
        return f"{suite[0].upper()}{suite[1:]}: {name}"


def words_of(name):
    """A name in camel case as words, abbreviations as they are."""
    words = re.findall(r"[A-Z]+(?![a-z])|[A-Z]?[a-z]+|\d+", name)
    return " ".join(word if len(word) > 1 and word.isupper() else word.lower() for word in words)


def comment_above(lines, at):
    """The comment that ends right above a line, as one text."""
    first = at
    while first > 0 and lines[first - 1].startswith("//"):
        first -= 1
    return " ".join(line.lstrip("/ ").strip() for line in lines[first:at])


def tests_of(project):
    """All tests by file and name. One without a kind of its own takes the last one above it."""
    found = {}
    for path in sorted((project / "tests").glob("*/*/*_test.cpp")):
        lines = path.read_text().splitlines()
        file = path.relative_to(project).as_posix()
        last = ""
        for at, line in enumerate(lines):
            above = comment_above(lines, at) if not line.startswith("//") else ""
            if KIND.match(above):
                last = above
            elif (inside := re.search(r"(?:Published|Outside): .*", above)) and not last:
                last = inside.group()
            if not re.match(r"TEST(_F|_P)?\(", line):
                continue
            end = lines.index("}", at)
            text = "\n".join(lines[at:end])
            suite, name = re.match(r"TEST(?:_F|_P)?\((\w+), (\w+)\)", line).groups()
            own = bool(KIND.match(above)) or not above and bool(last)
            source = above if KIND.match(above) else (above + " " + last).strip()
            test = Test(f"{suite}.{name}", file, at + 1, source,
                        re.findall(r'"([\w-]+\.csv)"', text))
            test.own = own and KIND.match(above) is not None
            found[file, test.name] = test
    return found
