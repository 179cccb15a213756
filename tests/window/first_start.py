"""The very first start: no settings of an earlier one. The window opens and has nothing to complain of.

    first_start.py PROGRAM
"""
import os
import pathlib
import subprocess
import sys
import tempfile

SECONDS = 4

with tempfile.TemporaryDirectory() as home:
    runtime = pathlib.Path(home, "runtime")
    runtime.mkdir(mode=0o700)
    environment = dict(os.environ, HOME=home, XDG_RUNTIME_DIR=str(runtime), QT_QPA_PLATFORM="offscreen",
                       QT_QUICK_BACKEND="software")
    for name in ("XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME"):
        environment.pop(name, None)
    with subprocess.Popen([sys.argv[1]], env=environment, stdout=subprocess.PIPE, stderr=subprocess.STDOUT,
                          text=True) as program:
        try:
            said, _ = program.communicate(timeout=SECONDS)
            sys.exit(f"The window did not stay open: {said}")
        except subprocess.TimeoutExpired:
            program.kill()
            said, _ = program.communicate()
        if said:
            sys.exit(f"The window complained: {said}")
