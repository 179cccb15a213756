"""A garden from nothing, in the real window with real mouse and key events: a new garden, a tree, a
path and a hedge; a crown raise comes of it, the hedge's shade, and who should cut. The figures on
the screen and the saved file are held against the same program's answers on the command line.

    garden_from_nothing.py PROGRAM FOLDER_FOR_PICTURES
"""

import json
import subprocess
import sys
import time

from screen import Screen

MOST_TO_A_CROWN_RAISE = 15
MOST_TO_A_HEDGES_SHADE = 8


def answers(screen, program, path):
    found = subprocess.run([program, "assess", "--json", str(path)], env=screen.environment,
                           capture_output=True, text=True, timeout=60, check=True)
    return json.loads(found.stdout)


def headline(screen, card):
    return (screen.find(card) or {}).get("headline", "")


def crown_raise(screen):
    screen.click("newButton")
    screen.focused("newNameInput")
    screen.type("Plot")
    screen.click("sheetDone")
    screen.click("firstTreeButton")
    screen.focused("treeKindInput")
    screen.type("norway ma")
    screen.key("Return")
    screen.focused("treeStemInput")
    screen.type("120")
    screen.key("Return")
    screen.wait(lambda: screen.find("roomCard"), "the answers")
    screen.picture("1-tree")
    screen.click("drawPlanButton")
    screen.click("planTool0")
    screen.drag("planDrawing", (0.56, 0.30), (0.60, 0.80))
    screen.wait(lambda: screen.find("thingHeadroomInput"), "the path")
    screen.picture("2-path")
    screen.click("drawPlanButton")
    screen.wait(lambda: any("instruction" in item for item in screen.items()), "cuts for the path",
                30)


def shade_on_the_hedge(screen):
    screen.click("drawPlanButton")
    screen.click("planTool1")
    screen.drag("planDrawing", (0.40, 0.28), (0.60, 0.32))
    screen.click("drawPlanButton")
    screen.wait(lambda: [item for item in screen.items() if "hedge" in item.get("subject", "")],
                "the hedge's sun", 30)


def save(screen):
    """Through the toolkit's own dialog, whose parts have no names: its button to accept."""
    screen.key("ctrl+s")
    time.sleep(1.0)
    screen.click_at(836, 633)

    def file():
        saved = [path for path in (screen.home / "Documents").glob("Plot*")
                 if path.suffix in (".underbough", ".json") and path.stat().st_size > 0]
        return saved[0] if saved else None
    return screen.wait(file, "the saved garden")


def check(screen, program):
    path = save(screen)
    found = answers(screen, program, path)
    tree = found["trees"][0]
    cuts = tree["suggestion"]["cuts"]
    drawn = [item for item in screen.items() if "instruction" in item]
    assert cuts, "no cut raises the crown over the path"
    assert len(drawn) == len(cuts), f"{len(drawn)} cuts on the screen, {len(cuts)} for the file"
    assert headline(screen, "whoCard"), "nobody is told to cut"
    assert headline(screen, "roomCard"), "nothing is said of the headroom"
    return path


def main():
    program, pictures = sys.argv[1:3]
    screen = Screen(program, pictures)
    try:
        started = time.monotonic()
        crown_raise(screen)
        to_the_raise = screen.actions
        screen.picture("3-crown-raise")
        shade_on_the_hedge(screen)
        to_the_shade = screen.actions - to_the_raise
        screen.picture("4-hedge")
        check(screen, program)
        screen.picture("5-saved")
        print(f"crown raise in {to_the_raise} actions, shade on the hedge in {to_the_shade} more, "
              f"{time.monotonic() - started:.0f} s")
        assert to_the_raise <= MOST_TO_A_CROWN_RAISE, to_the_raise
        assert to_the_shade <= MOST_TO_A_HEDGES_SHADE, to_the_shade
    finally:
        screen.end()


if __name__ == "__main__":
    main()
