"""Reads the program's German answers, as a system set to German and --language give them.

    german_check.py PROJECT PROGRAM

What no English sentence is without must not be there. Names that gardeners gave stand in quotes,
sources of figures in their own language.
"""

import datetime
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


def is_german(name, text, *said):
    plain = re.sub(r"„[^“]*“", "„…“", text)
    for number, line in enumerate(plain.splitlines(), 1):
        english = ENGLISH.search(line)
        if english:
            faults.append(f"{name}, line {number}: {english[0]!r} in {line.strip()!r}")
    for words in said:
        if words not in text:
            faults.append(f"{name}: doesn't say {words!r}")


day = ("--date", "2025-07-14")
in_german = ("--language", "de")
caution = "Nichts hier sagt, dass ein Baum oder ein Ast sicher ist"


def flowing(text):
    return " ".join(text.split())


assessed = run("assess", garden, *day, *in_german)
is_german("assess", assessed, "Silber-Ahorn", "14. Juli 2025", "Lichte Höhe")
if caution not in flowing(assessed):
    faults.append("assess: the caution is missing")
if run("assess", garden, *day, system="de_DE.UTF-8") != assessed:
    faults.append("a system set to German gets another answer than --language de")
english = run("assess", garden, *day, "--language", "en", system="de_AT.UTF-8")
if "Nothing here says that a tree or a limb is safe" not in flowing(english):
    faults.append("--language en is not English where the system is German")

# A decimal comma for people; the same figures behind it.
plain = run("assess", garden, *day)
if re.findall(r"\d+\.\d+ (?:m|kg|t)\b", plain)[:1] and not re.search(r"\d,\d+ m\b", assessed):
    faults.append("no decimal comma in German")

for verb, name in (("suggest", garden), ("headroom", garden), ("due", garden), ("due", orchard),
                   ("diary", orchard), ("light", garden)):
    is_german(f"{verb} {name.stem}", run(verb, name, *day, *in_german))
is_german("day", run("day", "--air", "33 C", "--gust", "60 km/h", *in_german))
is_german("a goal", run("suggest", garden, *day, "--relief", "90 %", *in_german))

# Names of fields are English for programs in every language.
fields = re.compile(r'"(\w+)":')
if (set(fields.findall(run("assess", garden, *day, "--json"))) !=
        set(fields.findall(run("assess", garden, *day, "--json", *in_german)))):
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
    run("report", garden, *day, "-o", page, *in_german)
    html = page.read_text(encoding="utf-8")
    for words in ('lang="de', "Die Schnitte, in Arbeitsfolge", "Silber-Ahorn"):
        if words not in html:
            faults.append(f"report: doesn't say {words!r}")

print("\n".join(faults) or "German throughout")
sys.exit(bool(faults))
