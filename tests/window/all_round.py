"""The tree in three dimensions, really drawn: the program with OpenGL on a display of its own (Mesa
stands in for a graphics card there), driven with real mouse and key events. Looks at what is on the
screen.

    all_round.py PROGRAM FOLDER_FOR_PICTURES GARDEN
"""

import subprocess
import sys
import time

from screen import Screen

TOLD_APART = 400  # colours in a picture with light and shade on it; a bare page has a few


class Picture:
    def __init__(self, screen):
        self.screen = screen

    def take(self, name):
        """The part of the screen where the tree is."""
        item = self.screen.shown("roundPicture")
        path = self.screen.pictures / f"{name}.png"
        subprocess.run(["import", "-window", "root", "-crop",
                        f"{item['width']:.0f}x{item['height']:.0f}+{item['x']:.0f}+{item['y']:.0f}",
                        "+repage", "-strip", str(path)], env=self.screen.environment, check=True)
        return path

    def settled(self, name, fault=lambda path: ""):
        """Taken once two in a row are the same and `fault` has nothing to say of it: a picture may
        be at rest before what was asked for has been worked out."""
        before = None
        for _ in range(60):
            time.sleep(0.5)
            path = self.take(name)
            now = path.read_bytes()
            if now == before and not fault(path):
                return path
            before = now
        raise AssertionError(fault(path) or "the picture does not come to rest")


def colours(path):
    return int(subprocess.run(["identify", "-format", "%k", str(path)], check=True,
                              capture_output=True, text=True).stdout)


def share_changed(before, after):
    """Of the pixels, by more than a shade."""
    told = subprocess.run(["compare", "-metric", "AE", "-fuzz", "4%", str(before), str(after),
                           "null:"], capture_output=True, text=True, check=False)
    size = subprocess.run(["identify", "-format", "%[fx:w*h]", str(before)], check=True,
                          capture_output=True, text=True)
    return float(told.stderr.split()[0]) / float(size.stdout)


def too_plain(path):
    told_apart = colours(path)
    return "" if told_apart > TOLD_APART else f"only {told_apart} colours are drawn"


def as_before(before, least, what):
    """A fault until more than this share of the picture has changed."""
    return lambda path: "" if share_changed(before, path) > least else what


def expect(truth, what):
    if not truth:
        raise AssertionError(what)


def look_round(screen):
    picture = Picture(screen)
    screen.wait(lambda: screen.find("roundButton"), "the window")
    slide = screen.shown("daySlide")  # to midsummer: the days are long
    screen.click_at(round(slide["x"] + 0.47 * slide["width"]),
                    round(slide["y"] + slide["height"] / 2))
    screen.click("roundButton")
    screen.wait(lambda: screen.find("roundPicture"), "the page")
    expect(not screen.find("roundMissing"), "the page says that it can't draw")
    first = picture.settled("round", too_plain)

    screen.focused("roundPicture")
    screen.key("Right", "Right", "Right", "Right")
    walked = picture.settled("round-walked",
                             as_before(first, 0.02, "walking round shows nothing else"))

    expect(not screen.find("limbName").get("text"), "a limb is chosen before one is pressed")
    item = screen.shown("roundPicture")
    screen.click_at(round(item["x"] + 0.5 * item["width"]), round(item["y"] + 0.75 * item["height"]))
    screen.wait(lambda: screen.find("limbName").get("text"), "the stem that was pressed")
    picture.settled("round-chosen", as_before(walked, 0.001, "the chosen limb looks as before"))

    for _ in range(12):
        screen.key("Prior")
    slide = screen.shown("hourSlide")
    middle = round(slide["y"] + slide["height"] / 2)
    noon = picture.settled("round-noon")
    screen.click_at(round(slide["x"] + 0.72 * slide["width"]), middle)
    evening = picture.settled("round-evening",
                              as_before(noon, 0.02, "the shadow stays where it was"))
    screen.click_at(round(slide["x"] + 0.04 * slide["width"]), middle)
    picture.settled("round-night", as_before(evening, 0.05, "night is as light as day"))

    screen.click("sideButton")
    screen.wait(lambda: screen.find("sideDrawing"), "the view from the side")


def main():
    program, pictures, garden = sys.argv[1:4]
    screen = Screen(program, pictures, draws="", garden=garden)
    try:
        look_round(screen)
    finally:
        screen.end()


if __name__ == "__main__":
    main()
