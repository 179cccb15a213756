"""Holds docs_check.py to noticing each kind of fault, in a small project made for it.

usage: docs_check_notices.py
"""

import pathlib
import shutil
import subprocess
import sys
import tempfile

CHECK = pathlib.Path(__file__).with_name("docs_check.py")
PAGE = """# A page
See [below](#what-holds), [the other](docs/other.md#two-words-1), [the net](https://example.org/x).
![A picture](docs/pictures/shown.png)
`[code](nowhere.md)`
```
[code](nowhere.md)
```
## What holds
"""
OTHER = "# Two words\n## Two words\n[Back](../page.md)\n"


def run(project, *options):
    done = subprocess.run([sys.executable, str(CHECK), str(project), *options],
                          capture_output=True, text=True, check=False)
    return done.returncode, done.stdout + done.stderr


def git(project, *words):
    subprocess.run(["git", "-C", str(project), "-c", "user.name=x", "-c", "user.email=x@example.org",
                    *words], check=True, capture_output=True)


def expect(project, fails, words, *options):
    status, told = run(project, *options)
    assert (status != 0) == fails and words in told, f"{words!r} not in {told!r}, status {status}"


def main():
    with tempfile.TemporaryDirectory() as folder:
        project = pathlib.Path(folder)
        (project / "docs/pictures").mkdir(parents=True)
        (project / "qml").mkdir()
        page, picture = project / "page.md", project / "docs/pictures/shown.png"
        page.write_text(PAGE)
        (project / "docs/other.md").write_text(OTHER)
        picture.write_bytes(b"first")
        expect(project, False, "every link leads somewhere")
        expect(project, False, "can't be told", "--strict")

        page.write_text(PAGE + "[lost](docs/lost.md)\n")
        expect(project, True, "page.md:9: docs/lost.md leads to no file")
        page.write_text(PAGE + "[lost](docs/other.md#three-words)\n")
        expect(project, True, "leads to no heading of other.md")
        page.write_text(PAGE + "[lost](#nowhere)\n")
        expect(project, True, "#nowhere leads to no heading of page.md")
        page.write_text(PAGE)
        unseen = project / "docs/pictures/unseen.svg"
        unseen.write_text("")
        expect(project, True, "docs/pictures/unseen.svg stands on no page")
        unseen.unlink()

        if not shutil.which("git"):
            print("no git here: old pictures not tried")
            return
        git(project, "init", "--quiet")
        git(project, "add", ".")
        git(project, "commit", "--quiet", "-m", "Begin")
        expect(project, False, "every picture is shown", "--strict")
        (project / "qml/Main.qml").write_text("Item {}")
        git(project, "add", ".")
        git(project, "commit", "--quiet", "-m", "Change the window")
        expect(project, False, "shown.png is older than what it shows: 1 since")
        expect(project, True, "Change the window", "--strict")
        picture.write_bytes(b"second")
        git(project, "commit", "--quiet", "-am", "Take it anew")
        expect(project, False, "every picture is shown", "--strict")
    print("every fault is noticed")


main()
