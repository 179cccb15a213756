"""The garden that docs/command-line.md shows is one that the program answers.

usage: garden_by_hand_check.py PROJECT_FOLDER PROGRAM
"""

import os
import pathlib
import re
import subprocess
import sys

project, program = pathlib.Path(sys.argv[1]), sys.argv[2]
page = (project / "docs" / "command-line.md").read_text()
garden = re.search(r"## A garden by hand\n.*?```json\n(.*?)```", page, flags=re.S)[1]


def answer(*command):
    ran = subprocess.run([program, *command], input=garden, capture_output=True, text=True, timeout=300,
                         env={**os.environ, "LC_ALL": "en_IE.UTF-8"}, check=False)
    if ran.returncode != 0:
        sys.exit(f"{command[0]} refuses it: {ran.stderr}")
    return " ".join(ran.stdout.split())


answer("check", "-")
suggested = answer("suggest", "-", "--date", "2025-07-01")
# The limb over the drive goes, and the answer says so of the drive rather than nothing at all.
for expected in ("Take off “drive limb”", "Afterwards: - Nothing overhangs “drive”."):
    if expected not in suggested:
        sys.exit(f"suggest does not say {expected}: {suggested}")
