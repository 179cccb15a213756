"""Holds each quoted run in README.md against what the program really answers.

usage: readme_check.py PROJECT_FOLDER PROGRAM [--write]

A block that starts with "$ app/run ..." must be the program's output, to the letter. --write puts
the present output there.
"""

import os
import pathlib
import re
import subprocess
import sys

project, program = pathlib.Path(sys.argv[1]), sys.argv[2]
readme = project / "README.md"
text = readme.read_text()


def answer(match):
    command = match[1]
    ran = subprocess.run([program, *command.split()], capture_output=True, text=True, cwd=project,
                         env={**os.environ, "LC_ALL": "en_IE.UTF-8"})
    return f"```\n$ app/run {command}\n{ran.stdout}{ran.stderr}```"


fresh, runs = re.subn(r"```\n\$ app/run ([^\n]*)\n.*?```", answer, text, flags=re.S)
if "--write" in sys.argv:
    readme.write_text(fresh)
elif fresh != text or not runs:
    sys.exit("README.md quotes what the program no longer says: run this with --write")
