"""Reads the program's German answers, as a system set to German and --language give them.

    german_check.py PROJECT PROGRAM

What no English sentence is without must not be there. Names that gardeners gave stand in quotes,
sources of figures in their own language.
"""

import datetime
import json
import os
import pathlib
import re
import subprocess
import sys
import tempfile

import icalendar

project, program = pathlib.Path(sys.argv[1]), sys.argv[2]
garden = project / "trees/examples/maple-drive.json"
orchard = project / "trees/examples/apple-path.json"
faults = []

ENGLISH = re.compile(r"\b(the|and|of|is|are|not|with|which|above|below|about|nothing|every|cut|cuts|"
                     r"leaf|limb|tree|ground|needs|needed|headroom|gust|sun|now|from|over|more|than|"
                     r"you|your|by|for|to)\b", re.IGNORECASE)


def run(*arguments, system="C.UTF-8"):
    environment = {**os.environ, "LC_ALL": system, "LANG": system, "LANGUAGE": "", "TZ": "UTC"}
    ran = subprocess.run([program, *map(str, arguments)], capture_output=True, env=environment)
    if ran.returncode:
        faults.append(f"{arguments}: status {ran.returncode}: {ran.stderr.decode()}")
    return ran.stdout.decode().replace("\u00a0", " ")


def own_words(part):
    """What gardeners wrote themselves: who came, what they noted."""
    if isinstance(part, dict):
        for name, value in part.items():
            yield from [value] if name in ("by", "note", "caption") else own_words(value)
    elif isinstance(part, list):
        for value in part:
            yield from own_words(value)


def flowing(text):
    return " ".join(text.split())


def is_german(name, text, *said):
    plain = re.sub(r"„[^“]*“", "„…“", flowing(text))
    for words in theirs:
        plain = plain.replace(flowing(words), "…")
    for english in ENGLISH.finditer(plain):
        around = plain[max(0, english.start() - 40):english.end() + 40]
        faults.append(f"{name}: {english[0]!r} in {around!r}")
    for words in said:
        if words not in flowing(text):
            faults.append(f"{name}: doesn't say {words!r}")


theirs = sorted((words for file in (garden, orchard)
                 for words in own_words(json.loads(file.read_text(encoding="utf-8"))) if words),
                key=len, reverse=True)
day = ("--date", "2025-07-14")
in_german = ("--language", "de")

assessed = run("assess", garden, *day, *in_german)
is_german("assess", assessed, "Silber-Ahorn", "14. Juli 2025", "Lichte Höhe",
          "Nichts hier sagt, dass ein Baum oder ein Ast sicher ist")
if not re.search(r"\d,\d+ m\b", assessed) or re.search(r"\d\.\d+ m\b", assessed):
    faults.append("assess: no decimal comma")

# The system's language, and one that was asked for before it.
due = run("due", garden, *day, *in_german)
is_german("due", due)
if run("due", garden, *day, system="de_DE.UTF-8") != due:
    faults.append("a system set to German gets another answer than --language de")
if "Due in the garden" not in run("due", garden, *day, "--language", "en", system="de_AT.UTF-8"):
    faults.append("--language en is not English where the system is German")

is_german("headroom", run("headroom", garden, *in_german))
is_german("diary", run("diary", orchard, *day, *in_german))
is_german("a goal", run("suggest", orchard, *day, "--relief", "90 %", *in_german))
is_german("light", run("light", garden, "--month", "7", *in_german))
is_german("day", run("day", "--air", "33 C", "--gust", "60 km/h", *in_german))

with tempfile.TemporaryDirectory() as folder:
    kept = pathlib.Path(folder) / "garten.underbough"
    back = pathlib.Path(folder) / "garten.json"
    nowhere = re.compile("|".join(re.escape(str(path)) for path in (kept, back, garden)))
    misspelt = pathlib.Path(folder) / "falsch.json"
    document = json.loads(garden.read_text(encoding="utf-8"))
    document["colour"] = "green"
    misspelt.write_text(json.dumps(document), encoding="utf-8")
    for verb, words, said in (
            ("check", ("check", misspelt), ("kann verwendet werden", "Bäume: 1", "Feld")),
            ("import", ("import", garden, kept), ("geschrieben",)),
            ("check of a file", ("check", kept), ("kann verwendet werden",)),
            ("export", ("export", kept, back), ("geschrieben",)),
            ("recover", ("recover", kept, pathlib.Path(folder) / "neu.underbough"), ("Äste:",))):
        is_german(verb, nowhere.sub("…", run(*words, *in_german)).replace(folder, ""), *said)
    document["trees"][0]["limbs"][0]["stations"][0]["diameter_m"] = -3
    misspelt.write_text(json.dumps(document), encoding="utf-8")
    for verb in ("check", "assess", "headroom"):
        ran = subprocess.run([program, verb, str(misspelt), *in_german], capture_output=True,
                             env={**os.environ, "LC_ALL": "C.UTF-8"}, check=False)
        if ran.returncode != 2 or "gefunden" not in ran.stderr.decode():
            faults.append(f"{verb}: a fault is told as {ran.stderr.decode()!r}")
    run("sun", "--lat", "47", "--lon", "8", *in_german)

# Names of fields are English for programs in every language.
fields = re.compile(r'"(\w+)":')
if (fields.findall(run("due", garden, *day, "--json")) !=
        fields.findall(run("due", garden, *day, "--json", *in_german))):
    faults.append("JSON: German has other fields")

with tempfile.TemporaryDirectory() as folder:
    calendar = pathlib.Path(folder) / "garten.ics"
    run("calendar", garden, *day, "-o", calendar, *in_german)
    events = icalendar.Calendar.from_ical(calendar.read_bytes()).walk("VEVENT")
    if not events:
        faults.append("calendar: no reminders")
    for event in events:
        for field in ("SUMMARY", "DESCRIPTION"):
            is_german(f"calendar, {field}", str(event[field]))
            if event[field].params.get("LANGUAGE") != "de":
                faults.append(f"calendar, {field}: says {event[field].params} as its language")
        if not isinstance(event["DTSTART"].dt, datetime.date):
            faults.append("calendar: no day")
    page = pathlib.Path(folder) / "arbeit.html"
    run("report", orchard, *day, "-o", page, *in_german)
    html = page.read_text(encoding="utf-8")
    for words in ('lang="de', "Die Schnitte, in Arbeitsfolge", "Apfel"):
        if words not in html:
            faults.append(f"report: doesn't say {words!r}")

print("\n".join(faults) or "German throughout")
sys.exit(bool(faults))
