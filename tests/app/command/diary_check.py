"""Writes visits with the program and reads the garden file with Python: what was asked for is there,
nothing else has changed, and what can't be read leaves the file as it was, byte for byte.

usage: diary_check.py PROJECT_FOLDER PROGRAM
"""

import json
import os
import pathlib
import shutil
import sqlite3
import struct
import subprocess
import sys
import tempfile
import zlib

project, program = pathlib.Path(sys.argv[1]), sys.argv[2]
faults = []


def check(good, message):
    if not good:
        faults.append(message)


def run(*arguments):
    return subprocess.run([program, *map(str, arguments)], capture_output=True, text=True)


def added(garden, *arguments):
    """The garden before and after, and the visit that is new."""
    before = json.loads(garden.read_text(encoding="utf-8"))
    ran = run("diary", garden, "--add", *arguments)
    check(ran.returncode == 0 and not ran.stderr, f"{arguments}: {ran.stderr}")
    after = json.loads(garden.read_text(encoding="utf-8"))
    old = {v["id"] for v in before["trees"][0]["visits"]}
    new = [v for v in after["trees"][0]["visits"] if v["id"] not in old]
    check(len(new) == 1, f"{arguments}: {len(new)} new visits")
    return before, after, new[0]


def without_visit(garden, visit):
    garden["trees"][0]["visits"] = [v for v in garden["trees"][0]["visits"] if v["id"] != visit]
    return garden


def picture(path):
    """A small PNG, written here by the standard (ISO/IEC 15948)."""
    def chunk(kind, data):
        return (struct.pack(">I", len(data)) + kind + data +
                struct.pack(">I", zlib.crc32(kind + data)))
    rows = b"".join(b"\0" + b"\x40\x90\x30" * 8 for _ in range(6))
    path.write_bytes(b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", struct.pack(">IIBBBBB", 8, 6, 8, 2, 0, 0, 0)) +
                     chunk(b"IDAT", zlib.compress(rows)) + chunk(b"IEND", b""))
    return path.read_bytes()


def due(garden, date):
    return json.loads(run("due", garden, "--json", "--date", date).stdout)["due"]


with tempfile.TemporaryDirectory() as folder:
    garden = pathlib.Path(folder) / "apple.json"
    shutil.copy(project / "trees/examples/apple-path.json", garden)

    # A free visit of years ago, in all its fields.
    before, after, visit = added(
        garden, "--date", "2022-08-01", "--cut", "removal:a limb long gone", "--cut",
        "thinning:west-scaffold=20 %", "--leaf", "12 %", "--headroom", "path=1.7 m..2.05 m", "--by",
        "Ann", "--air", "9 C", "--humidity", "70 %", "--gust", "5 m/s", "--note", "Cold and dry.",
        "--next-due", "2023-07-01", "--units", "metric")
    check(visit["date"] == "2022-08-01" and visit["by"] == "Ann", f"who and when: {visit}")
    check([(c["kind"], c["limb"]) for c in visit["cuts"]] ==
          [("removal", "a limb long gone"), ("thinning", "west-scaffold")], f"cuts: {visit['cuts']}")
    check(visit["leaf_share"] == 0.12 and visit["next_due"] == "2023-07-01", f"{visit}")
    check(visit["headroom"] == [{"strip": "path", "before_m": 1.7, "after_m": 2.05}], f"{visit}")
    check(visit["weather"] == {"air_degC": 9, "humidity": 0.7, "gust_m_s": 5}, f"{visit}")
    check(after["trees"][0]["visits"][0]["id"] == visit["id"], "it doesn't stand in its order")
    check(without_visit(after, visit["id"]) == before, "something else has changed")

    # The same tip a year apart: growth that is measured, and that the next answer reckons with.
    _, _, visit = added(garden, "--date", "2023-08-01", "--tip", "west-scaffold=-1 m,0.2 m,2.5 m")
    check(visit["tips"] == [{"limb": "west-scaffold", "before_m": [-1, 0.2, 2.5]}], f"{visit}")
    added(garden, "--date", "2024-07-19", "--tip", "west-scaffold=-1.3 m,0.2 m,2.9 m")
    tree = json.loads(run("diary", garden, "--json", "--date", "2024-07-20").stdout)["trees"][0]
    grown = [g for g in tree["growth"] if g["at"] == "tip"]
    check(len(grown) == 1 and abs(grown[0]["moved_m"] - 0.5) < 1e-6, f"growth: {grown}")
    check(tree["shoots"]["measurements"] >= 1, f"nothing learnt: {tree['shoots']}")
    shutil.copy(project / "trees/examples/apple-path.json", garden)

    # The plan's cuts, made on the sketch.
    date = "2025-07-25"
    plan = json.loads(run("suggest", garden, "--json", "--date", date).stdout)["trees"][0]["suggestion"]
    check(len(plan["cuts"]) > 0, "the example plans no cut")
    overdue = {d["kind"] for d in due(garden, date) if d["state"] == "overdue"}
    check("headroom" in overdue and "written" in overdue, f"overdue before: {overdue}")
    before, after, visit = added(garden, "--date", date, "--cut", "plan", "--headroom",
                                 "path=1.9 m..2.6 m", "--apply", "--units", "metric")
    check(len(visit["cuts"]) == len(plan["cuts"]), "not all of the plan was written")
    check(abs(visit["leaf_share"] - plan["leaf_share"]) < 1e-3, f"leaf: {visit['leaf_share']}")
    kept = {limb["id"]: limb for limb in visit["limbs_before"]}
    drawn = {limb["id"]: limb for limb in after["trees"][0]["limbs"]}
    check(kept and all(before_limb == kept.get(before_limb["id"], before_limb)
                       for before_limb in before["trees"][0]["limbs"]), "limbs before are not kept")
    check(all(drawn.get(name) != limb for name, limb in kept.items()), "the sketch was not cut")
    check(all(w["diameter_m"] > 0 for w in visit.get("wounds", [])), "a wound of no width")
    overdue = {d["kind"] for d in due(garden, "2025-07-26") if d["state"] == "overdue"}
    check(not overdue & {"headroom", "written"}, f"overdue after: {overdue}")
    left = json.loads(run("suggest", garden, "--json", "--date", "2025-07-26").stdout)
    left = left["trees"][0]["suggestion"]["allowance_share"]
    check(abs(left - (plan["allowance_share"] - visit["leaf_share"])) < 1e-3,
          f"a second visit may take {left}")

    # A wound that has closed, by its number in the list.
    wounds = json.loads(run("diary", garden, "--json", "--date", "2027-05-03").stdout)
    wounds = wounds["trees"][0]["wounds"]
    ran = run("diary", garden, "--closed", len(wounds), "--date", "2027-05-03")
    check(ran.returncode == 0 and not ran.stderr, f"--closed: {ran.stderr}")
    after = json.loads(run("diary", garden, "--json", "--date", "2027-05-04").stdout)
    after = after["trees"][0]["wounds"]
    check(after[-1]["closed"] == "2027-05-03" and after[-1]["open_m"] == 0, f"closed: {after[-1]}")
    check(after[:-1] == json.loads(run("diary", garden, "--json", "--date", "2027-05-04").stdout)
          ["trees"][0]["wounds"][:-1], "another wound has changed")
    for wrong in len(wounds), len(wounds) + 1, 0, "first":
        ran = run("diary", garden, "--closed", wrong, "--date", "2027-05-03")
        check(ran.returncode == 2 and ran.stderr.count("\n") == 1, f"--closed {wrong}: {ran.stderr}")
    check(run("diary", garden, "--closed", "1", "--add").returncode == 2, "--closed with --add")

    # Photos: beside a garden in JSON, inside a garden file; the bytes are those of the camera.
    photo = pathlib.Path(folder) / "West side.png"
    bytes_of_photo = picture(photo)
    shutil.copy(project / "trees/examples/apple-path.json", garden)
    _, _, visit = added(garden, "--date", "2025-07-25", "--photo", photo)
    name = visit["photos"][0]["file"]
    check((pathlib.Path(folder) / name).read_bytes() == bytes_of_photo, f"{name} is not the photo")
    store = pathlib.Path(folder) / "apple.underbough"
    check(run("import", garden, store).returncode == 0, "import")
    check(run("diary", store, "--add", "--date", "2025-07-26", "--photo", photo).returncode == 0,
          "a photo into a garden file")
    with sqlite3.connect(store) as rows:
        kept = rows.execute("SELECT name, bytes FROM photo").fetchall()
        check(kept == [(name, bytes_of_photo)], f"photos in the file: {[row[0] for row in kept]}")
    ran = run("diary", garden, "--add", "--photo", garden)
    check(ran.returncode == 2 and "no picture" in ran.stderr, f"no picture: {ran.stderr}")
    shutil.rmtree(pathlib.Path(folder) / "photos")
    for file in photo, store:
        file.unlink()

    # A garden file that is named from the folder it lies in.
    store = pathlib.Path(folder) / "here.underbough"
    check(run("import", project / "trees/examples/apple-path.json", store).returncode == 0, "import")
    ran = subprocess.run([program, "diary", store.name, "--add", "--date", "2025-07-25"],
                         capture_output=True, text=True, cwd=folder)
    told = json.loads(run("diary", store, "--json", "--date", "2025-07-26").stdout)
    dates = [v["date"] for v in told["trees"][0]["visits"]]
    check(ran.returncode == 0 and "2025-07-25" in dates, f"told as written, and is not there: {dates}")
    store.unlink()

    # One of the plan's cuts: the others are noted as left.
    shutil.copy(project / "trees/examples/birch-lawn.json", garden)
    plan = json.loads(run("suggest", garden, "--json", "--date", "2025-10-20").stdout)
    planned = len(plan["trees"][0]["suggestion"]["cuts"])
    _, _, visit = added(garden, "--date", "2025-10-20", "--cut", "1")
    check(len(visit["cuts"]) == 1 and len(visit.get("left", [])) == planned - 1,
          f"one of {planned} made, {len(visit.get('left', []))} left")

    # What can't be read, or written, leaves every byte.
    whole = garden.read_bytes()
    for wrong in (["--cut", "99"], ["--cut", "felling:stem"], ["--cut", "reduction:stem"],
                  ["--date", "yesterday"], ["--leaf", "much"], ["--headroom", "moat=2 m"],
                  ["--headroom", "mower-strip"], ["--tip", "no such limb"], ["--tip", "trunk=1 m"], ["--tree", "oak"], ["--next-due", "1999-01-01"],
                  ["--cut", "removal:no such limb", "--apply"], ["--by", "two\nlines"],
                  ["--date", "2025-10-20", "--next-due", "2025-10-01"]):
        ran = run("diary", garden, "--add", *wrong)
        check(ran.returncode == 2, f"{wrong}: status {ran.returncode}")
        check(not ran.stdout and ran.stderr.count("\n") == 1, f"{wrong}: {ran.stdout}{ran.stderr}")
        check(garden.read_bytes() == whole, f"{wrong}: the file has changed")
    check(run("diary", garden, "--cut", "1").returncode == 2, "--cut without --add is taken")
    check(run("diary", "-", "--add").returncode == 2, "standard input is written to")
    check(sorted(os.listdir(folder)) == ["apple.json"], f"left behind: {os.listdir(folder)}")

    # The same day, the same bytes; --fail-on-attention tells what is overdue.
    apple = project / "trees/examples/apple-path.json"
    for verb in "diary", "due":
        asked = verb, apple, "--date", "2025-08-01"
        check(run(*asked).stdout == run(*asked).stdout != "", f"{verb} differs from itself")
        check(run(*asked, "--fail-on-attention").returncode == 1, f"{verb} does not fail")
    check("Overdue" in run("due", apple, "--date", "2025-08-01").stdout, "nothing is overdue")

print("\n".join(faults) or "visits are written whole or not at all")
sys.exit(bool(faults))
