"""Looks for what has gone stale in the pages: dead links, dead anchors, pictures that nobody shows,
and pictures of the window that are older than the code they show.

usage: docs_check.py PROJECT_FOLDER [--strict]

Addresses on the net are not fetched. How old a picture is the history of git says; where that is
cut short, or missing, it can't be known, and so an old picture fails the check with --strict alone.
"""

import pathlib
import re
import shutil
import subprocess
import sys

PICTURES = "docs/pictures"
SHOWN_CODE = ["qml", "app/drawing"]  # what a picture of the window shows
LINK = re.compile(r"!?\[(?:[^\[\]]|\[[^\]]*\])*\]\(([^)\s]+)(?:\s+\"[^\"]*\")?\)")


def pages(project):
    """All pages in Markdown, none of a build folder's."""
    return sorted(path for path in project.rglob("*.md")
                  if not any(part.startswith(("build", ".git")) for part in
                             path.relative_to(project).parts[:-1]))


def prose(text):
    """A page's lines with their numbers, code left out."""
    fenced = False
    for number, line in enumerate(text.splitlines(), 1):
        if line.lstrip().startswith("```"):
            fenced = not fenced
        elif not fenced:
            yield number, re.sub(r"`[^`]*`", lambda code: "`" * len(code.group()), line)


def anchors(text):
    """The anchors that a page's headings make, as GitHub makes them."""
    found = set()
    fenced = False
    for line in text.splitlines():
        if line.lstrip().startswith("```"):
            fenced = not fenced
        heading = None if fenced else re.match(r"#{1,6}\s+(.*)", line)
        if not heading:
            continue
        words = re.sub(r"\[([^\]]*)\]\([^)]*\)", r"\1", heading.group(1)).strip().lower()
        anchor = re.sub(r"[^\w\- ]", "", words).replace(" ", "-")
        name, again = anchor, 0
        while name in found:
            again += 1
            name = f"{anchor}-{again}"
        found.add(name)
    return found


def dead_links(project):
    """One line for each link that leads nowhere."""
    for page in pages(project):
        at = page.relative_to(project)
        for number, line in prose(page.read_text()):
            for target in LINK.findall(line):
                if re.match(r"[a-z]+:", target):
                    continue
                path, _, anchor = target.partition("#")
                goal = (page.parent / path).resolve() if path else page
                if not goal.exists():
                    yield f"{at}:{number}: {target} leads to no file"
                elif anchor and goal.suffix == ".md" and anchor not in anchors(goal.read_text()):
                    yield f"{at}:{number}: {target} leads to no heading of {goal.name}"


def unseen_pictures(project):
    """Pictures that no page shows."""
    shown = set()
    for page in pages(project):
        for _, line in prose(page.read_text()):
            shown |= {(page.parent / target).resolve() for target in LINK.findall(line)}
    for picture in sorted((project / PICTURES).glob("*")):
        if picture.resolve() not in shown:
            yield f"{picture.relative_to(project)} stands on no page: show it or delete it"


def git(project, *words):
    """What git answers; None where there is no git, or no history."""
    if not shutil.which("git"):
        return None
    done = subprocess.run(["git", "-C", str(project), *words], capture_output=True, text=True,
                          check=False)
    return done.stdout.strip() if done.returncode == 0 else None


def old_pictures(project):
    """Pictures of the window with changes of what they show since; None if that can't be known."""
    if git(project, "rev-parse", "--is-shallow-repository") != "false":
        return None
    old = []
    for picture in sorted((project / PICTURES).glob("*.png")):
        path = str(picture.relative_to(project))
        taken = git(project, "log", "-1", "--format=%H", "--", path)
        if not taken:
            continue  # not committed yet
        since = git(project, "log", "--format=%h %s", f"{taken}..HEAD", "--", *SHOWN_CODE)
        if since:
            commits = since.splitlines()
            old.append(f"{path} is older than what it shows: {len(commits)} since, the newest "
                       f"{commits[0]}")
    return old


def main():
    words = [word for word in sys.argv[1:] if word != "--strict"]
    if len(words) != 1:
        raise SystemExit(__doc__)
    project = pathlib.Path(words[0]).resolve()
    faults = [*dead_links(project), *unseen_pictures(project)]
    print("\n".join(faults) or "every link leads somewhere, every picture is shown")
    old = old_pictures(project)
    if old is None:
        print("how old the pictures are can't be told: no whole history here")
    elif old:
        print("\n".join(old) + "\ntake them anew: docs/take-pictures")
    return 1 if faults or old and "--strict" in sys.argv else 0


if __name__ == "__main__":
    sys.exit(main())
