"""The real program on a display of its own, driven with real mouse and key events."""

import json
import os
import pathlib
import subprocess
import tempfile
import time

PATIENCE = int(os.environ.get("UNDERBOUGH_PATIENCE", "1"))  # more in the watched builds, which are slower


class Screen:
    """Starts Xvfb and the program; finds items by name in the state that the program writes
    (app/window/state_output.hpp). Counts what a person does: a click, a drag, a text typed, a key."""

    def __init__(self, program, pictures, size=(1440, 920), tells_state=True, draws="software",
                 garden=None, language="", dark=False):
        self.pictures = pathlib.Path(pictures)
        self.pictures.mkdir(parents=True, exist_ok=True)
        self.home = pathlib.Path(tempfile.mkdtemp(prefix="underbough-"))
        self.actions = 0
        self.path_of_program = program
        self.state_file = self.home / "state.json"
        self.environment = dict(
            os.environ, HOME=str(self.home), XDG_CONFIG_HOME=str(self.home / "config"),
            XDG_RUNTIME_DIR=str(self.home), XDG_DATA_HOME=str(self.home / "data"),
            LC_ALL="C.UTF-8", LANG="en_IE.UTF-8", TZ="Europe/Zurich", QT_QUICK_BACKEND=draws,
            **({"UNDERBOUGH_STATE_FILE": str(self.state_file)} if tells_state else {}))
        for name in ("WAYLAND_DISPLAY", "QT_QPA_PLATFORM"):
            self.environment.pop(name, None)
        (self.home / "Documents").mkdir()
        for _ in range(5):
            if self.has_display(size):
                break
        settings = self.home / "config" / "Underbough"
        settings.mkdir(parents=True)
        (settings / "Underbough.conf").write_text(
            f"[General]\nwindowGeometry=@Rect(0 0 {size[0]} {size[1]})\n"
            f"dark={str(dark).lower()}\nlanguage={language}\n")
        self.started = time.monotonic()
        self.program = subprocess.Popen([program] + ([str(garden)] if garden else []),
                                        env=self.environment)
        try: # what was started must not outlive a test that fails here: it holds ctest's pipes
            self.window = self.wait(self.first_window, "the window", 60)
            self.xdotool("windowfocus", "--sync", self.window)
            if tells_state:
                self.wait(lambda: self.state_file.exists(), "the window's state")
        except BaseException:
            self.end()
            raise

    def has_display(self, size):
        """Another server that looks for a free number at the same time may take it first."""
        read, write = os.pipe()
        self.server = subprocess.Popen(
            ["Xvfb", "-displayfd", str(write), "-screen", "0", f"{size[0]}x{size[1]}x24",
             "-nolisten", "tcp", "-noreset"], # else it begins anew, deaf for a while, when xdotool leaves
            pass_fds=[write], stderr=subprocess.DEVNULL)
        os.close(write)
        with os.fdopen(read) as told:
            self.environment["DISPLAY"] = ":" + told.readline().strip()
        there = subprocess.run(["xdotool", "getdisplaygeometry"], env=self.environment,
                               capture_output=True, timeout=20, check=False).returncode == 0
        if there and self.server.poll() is None:
            return True
        self.server.kill()
        self.server.wait()
        return False

    def first_window(self):
        """None while there is none; xdotool fails too when a window goes while it looks."""
        told = subprocess.run(["xdotool", "search", "--onlyvisible", "--name", "Underbough"],
                              env=self.environment, capture_output=True, text=True, timeout=20,
                              check=False)
        return next(iter(told.stdout.split()), None)

    def xdotool(self, *words):
        return subprocess.run(["xdotool", *words], env=self.environment, check=True,
                              capture_output=True, text=True, timeout=20).stdout

    def items(self):
        return json.loads(self.state_file.read_text())["items"]

    def find(self, name):
        return next((item for item in self.items() if item.get("name") == name), None)

    def wait(self, condition, what, seconds=20):
        seconds *= PATIENCE
        end = time.monotonic() + seconds
        while time.monotonic() < end:
            found = condition()
            if found:
                return found
            if self.program.poll() is not None:
                raise AssertionError(f"the program ended while waiting for {what}")
            time.sleep(0.05)
        self.picture("missing")
        raise AssertionError(f"{what} did not come within {seconds} s")

    def shown(self, name):
        """An item that stands still, so that a click finds it."""
        before = None

        def steady():
            nonlocal before
            now = self.find(name)
            same = now is not None and now == before
            before = now
            if not same:
                time.sleep(0.12)
            return now if same else None
        return self.wait(steady, name)

    def middle(self, name):
        item = self.wait(lambda: (lambda it: it if it and it["enabled"] else None)(
            self.shown(name)), f"{name}, enabled")
        return item["x"] + item["width"] / 2, item["y"] + item["height"] / 2

    def click(self, name):
        self.actions += 1
        x, y = self.middle(name)
        self.xdotool("mousemove", str(round(x)), str(round(y)), "click", "1")

    def click_at(self, x, y):
        self.actions += 1
        self.xdotool("mousemove", str(x), str(y), "click", "1")

    def roll(self, name):
        """Down to the end, with the wheel over an item."""
        self.actions += 1
        item = self.shown(name)
        self.xdotool("mousemove", str(round(item["x"] + item["width"] / 2)),
                     str(round(item["y"] + 0.4 * min(item["height"], 600))),
                     "click", "--repeat", "25", "--delay", "20", "5")

    def drag(self, name, start, end):
        """Between two places in an item, as shares of its width and height."""
        self.actions += 1
        item = self.shown(name)

        def place(share):
            return (str(round(item["x"] + share[0] * item["width"])),
                    str(round(item["y"] + share[1] * item["height"])))
        half = ((start[0] + end[0]) / 2, (start[1] + end[1]) / 2)
        self.xdotool("mousemove", *place(start), "mousedown", "1", "sleep", "0.1", "mousemove",
                     *place(half), "sleep", "0.1", "mousemove", *place(end), "sleep", "0.1",
                     "mouseup", "1")

    def type(self, text):
        self.actions += 1
        self.xdotool("type", "--delay", "15", text)

    def key(self, *keys):
        self.actions += 1
        self.xdotool("key", *keys)

    def focused(self, name):
        self.wait(lambda: (self.find(name) or {}).get("focus"), f"the focus on {name}")

    def first_tree(self):
        """Answers the form for a new tree, which is open, and waits for what is found of it."""
        self.focused("treeKindInput")
        self.type("norway ma")
        self.key("Return")
        self.focused("treeStemInput")
        self.type("120")
        self.key("Return")
        self.wait(lambda: self.find("roomCard"), "the answers")

    def picture(self, name):
        subprocess.run(["import", "-window", "root", "-strip", str(self.pictures / f"{name}.png")],
                       env=self.environment, check=False)

    def end(self):
        for process in (self.program, self.server):
            process.terminate()
            try:
                process.wait(10)
            except subprocess.TimeoutExpired:
                process.kill()
