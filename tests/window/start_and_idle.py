"""How long the window takes to its first picture, and what it costs while nobody touches it.

    start_and_idle.py PROGRAM FOLDER_FOR_PICTURES

Prints both; it is no test, for a busy machine tells nothing. Run it on a machine that does nothing
else; docs/window.md has the figures.
"""

import os
import subprocess
import sys
import time

from screen import Screen

RESTS_AFTER_S = 25  # the example's year of light is reckoned by then
WATCHED_S = 20


def processor_s(pid):
    with open(f"/proc/{pid}/stat", encoding="ascii") as stat:
        fields = stat.read().rsplit(")", 1)[1].split()
    return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")


def first_picture_s(screen):
    """Until something is drawn where the bar at the top is; a bare screen is black."""
    while True:
        seen = subprocess.run(["import", "-window", "root", "-crop", "1x1+700+6", "txt:-"],
                              env=screen.environment, capture_output=True, text=True, check=True)
        if "#000000" not in seen.stdout:
            return time.monotonic() - screen.started
        time.sleep(0.01)


def main():
    program, pictures = sys.argv[1:3]
    # The state file is a test's: it looks round ten times a second, which an idle window does not.
    screen = Screen(program, pictures, tells_state=False)
    try:
        print(f"first picture after {1000 * first_picture_s(screen):.0f} ms")
        time.sleep(RESTS_AFTER_S)
        before = processor_s(screen.program.pid)
        time.sleep(WATCHED_S)
        used = processor_s(screen.program.pid) - before
        print(f"idle: {100 * used / WATCHED_S:.2f} % of one processor over {WATCHED_S} s")
    finally:
        screen.end()


if __name__ == "__main__":
    main()
