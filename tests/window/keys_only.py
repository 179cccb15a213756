"""A whole job in the real window with no mouse: a new garden, a tree, a path under it, a limb grown and
bent, a cut tried, a suggested cut left, the visit written and saved. Wherever Tab comes to on the way,
something named is said to have the keyboard.

    keys_only.py PROGRAM FOLDER_FOR_PICTURES
"""

import json
import subprocess
import sys
import time

from screen import Screen

ALL_ROUND = 160  # Tab stops that no page of this garden has


def tab_to(screen, wanted, back=False):
    """Tab until `wanted`, a name or a question to the items that have the focus, is there."""
    is_there = wanted if callable(wanted) else lambda item: item.get("name") == wanted
    for _ in range(ALL_ROUND):
        if any(item.get("focus") and is_there(item) for item in screen.items()):
            return
        before = screen.state_file.stat().st_mtime_ns
        screen.key("shift+Tab" if back else "Tab")
        end = time.monotonic() + 0.5  # the state is written ten times a second
        while screen.state_file.stat().st_mtime_ns == before and time.monotonic() < end:
            time.sleep(0.02)
        assert any(item.get("focus") for item in screen.items()), "nothing has the keyboard"
    raise AssertionError(f"Tab never comes to {wanted}")


def press(screen, name, back=False, part=0):
    """`part`: so many parts of the window on, or back."""
    for _ in range(abs(part)):
        screen.key("F6" if part > 0 else "shift+F6")
        time.sleep(0.2)
    tab_to(screen, name, back)
    screen.key("space")


def garden_and_tree(screen):
    screen.key("ctrl+n")
    screen.focused("newNameInput")
    screen.type("Keys")
    press(screen, "sheetDone")
    screen.wait(lambda: not screen.find("newNameInput"), "the end of the form")
    press(screen, "firstTreeButton")
    screen.first_tree()


def path_under_it(screen):
    press(screen, "drawPlanButton")
    press(screen, "planTool0", back=True)
    screen.key("Return")  # without a corner: in the middle
    screen.wait(lambda: screen.find("thingHeadroomInput"), "the path")
    tab_to(screen, "thingHeadroomInput")
    screen.key("ctrl+a")
    screen.type("3.5 m")
    screen.key("Return")
    press(screen, "drawPlanButton", back=True)
    screen.wait(lambda: screen.find("sideDrawing"), "the side view")


def limb(screen):
    """Grown from a handle, bent, and made thicker, each a step that Undo names."""
    tab_to(screen, lambda item: item["name"].startswith("handle-"))
    screen.wait(lambda: screen.find("limbName").get("text"), "a chosen limb")
    screen.key("Insert")
    screen.wait(lambda: "limb" in screen.find("undoButton").get("text", ""), "the new limb")
    screen.key("Up", "Up", "shift+Right", "plus")
    screen.wait(lambda: "Undo: " in screen.find("undoButton").get("text", ""), "the name of the step")
    return screen.find("undoButton")["text"]


def cuts(screen):
    screen.wait(lambda: any("instruction" in item for item in screen.items()), "cuts", 60)
    press(screen, "tryChosen")
    screen.wait(lambda: screen.find("putBack0"), "the cut tried")
    leave = next((item["name"] for item in screen.items() if item.get("name", "").startswith("leave-")), None)
    if leave:
        press(screen, leave)
        screen.wait(lambda: not screen.find(leave), f"the end of {leave}", 60)
    return leave


def visit(screen):
    press(screen, "diaryButton", part=2)  # past the cautions, to the top
    press(screen, "newVisitButton", part=1)
    screen.focused("visitDateInput")
    tab_to(screen, "visitByInput")
    screen.type("me")
    press(screen, "saveVisitButton")
    screen.wait(lambda: screen.find("visit0"), "the visit in the diary")


def save(screen):
    """Through the toolkit's own dialog, whose parts have no names: name, filter, the button to accept."""
    screen.key("ctrl+s")
    time.sleep(1.5)
    for key in ("Tab", "Tab", "Tab", "space"):
        screen.key(key)
        time.sleep(0.2)

    def file():
        saved = [path for path in (screen.home / "Documents").glob("Keys*.underbough") if path.stat().st_size > 0]
        return saved[0] if saved else None
    return screen.wait(file, "the saved garden")


def main():
    program, pictures = sys.argv[1:3]
    screen = Screen(program, pictures)
    try:
        for step in (garden_and_tree, path_under_it, limb, cuts, visit):
            step(screen)
            screen.picture(f"keys-{step.__name__}")
        path = save(screen)
        out = json.loads(subprocess.run([program, "diary", "--json", str(path)], env=screen.environment,
                                        capture_output=True, text=True, timeout=60, check=True).stdout)
        assert out["trees"][0]["visits"][0]["by"] == "me", out
    finally:
        screen.end()


if __name__ == "__main__":
    main()
