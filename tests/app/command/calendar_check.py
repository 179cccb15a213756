"""Reads the program's calendars back with python3-icalendar, which shares no code with libical.

usage: calendar_check.py PROJECT_FOLDER PROGRAM

Held against RFC 5545: CRLF and folding at 75 bytes (3.1), what a calendar and an event must have
(3.6, 3.6.1), dates without times and an end that is not included (3.6.1, 3.8.2.2), UTC stamps
(3.8.7.2), alarms (3.6.6). Importing is acted out: events by UID, a newer SEQUENCE replaces.
"""

import datetime
import json
import pathlib
import subprocess
import sys
import tempfile

import icalendar

project, program = pathlib.Path(sys.argv[1]), sys.argv[2]
faults = []


def check(good, message):
    if not good:
        faults.append(message)


def run(*arguments):
    return subprocess.run([program, *map(str, arguments)], capture_output=True)


def exported(garden, date, folder):
    file = pathlib.Path(folder) / f"{garden.stem}-{date}.ics"
    ran = run("calendar", garden, "--date", date, "-o", file)
    check(ran.returncode == 0, f"{garden.stem}: {ran.stderr}")
    return file.read_bytes()


def check_lines(name, data):
    lines = data.split(b"\r\n")
    check(lines[-1] == b"", f"{name}: the last line has no end")
    check(all(b"\n" not in line for line in lines), f"{name}: a bare line feed")
    check(all(len(line) <= 75 for line in lines), f"{name}: a line of over 75 bytes")


def check_event(name, event, due, date):
    start, end = event["DTSTART"], event["DTEND"]
    check(start.params.get("VALUE") == "DATE" and end.params.get("VALUE") == "DATE",
          f"{name}: the days carry times")
    if due["state"] == "overdue":
        check(start.dt == date and end.dt == date + datetime.timedelta(1), f"{name}: not today")
    else:
        check(start.dt.isoformat() == due["from"], f"{name}: starts on {start.dt}")
    check(end.dt > start.dt, f"{name}: ends before it starts")
    stamp = event["DTSTAMP"].dt
    check(stamp.utcoffset() == datetime.timedelta(0), f"{name}: the stamp is not in UTC")
    check(event["LAST-MODIFIED"].dt == stamp, f"{name}: modified at another time than stamped")
    check(event["TRANSP"] == "TRANSPARENT", f"{name}: takes time")
    check(event["SUMMARY"].params.get("LANGUAGE") == "en", f"{name}: doesn't say its language")
    check(due["what"] in str(event["SUMMARY"]).replace("\u00a0", " "), f"{name}: {event['SUMMARY']}")
    check(due["why"] in str(event["DESCRIPTION"]).replace("\u00a0", " "), f"{name}: doesn't say why")
    check("certified arborist" in event["DESCRIPTION"], f"{name}: carries no cautions")
    alarms = event.walk("VALARM")
    rings = sorted((a["TRIGGER"].dt for a in alarms))
    day = datetime.timedelta(days=1)
    nine = datetime.timedelta(hours=9)
    check(rings == [nine - 7 * day, nine - day], f"{name}: rings at {rings}")
    check(all(a["ACTION"] == "DISPLAY" and a["DESCRIPTION"] for a in alarms), f"{name}: mute alarm")


def imported(calendar, into):
    """What a calendar program does with a file: the newer of two events with one UID stays."""
    for event in calendar.walk("VEVENT"):
        old = into.get(str(event["UID"]))
        if old is None or event["SEQUENCE"] >= old["SEQUENCE"]:
            into[str(event["UID"])] = event


gardens = sorted((project / "trees/examples").glob("*.json"))
check(len(gardens) >= 3, "fewer than three example gardens")
uids = []
with tempfile.TemporaryDirectory() as folder:
    for garden in gardens:
        held = {}
        for date in ("2025-02-10", "2025-07-14", "2026-03-01"):
            data = exported(garden, date, folder)
            name = f"{garden.stem} {date}"
            check_lines(name, data)
            calendar = icalendar.Calendar.from_ical(data)
            check(calendar["VERSION"] == "2.0" and calendar["PRODID"], f"{name}: no version")
            due = json.loads(run("due", garden, "--json", "--date", date).stdout)["due"]
            events = calendar.walk("VEVENT")
            check(len(events) == len(due) > 0, f"{name}: {len(events)} events for {len(due)} due")
            for event, one in zip(events, due):
                check_event(f"{name} {one['kind']}", event, one, datetime.date.fromisoformat(date))
            ids = [str(event["UID"]) for event in events]
            check(len(set(ids)) == len(ids), f"{name}: a UID twice in one file")
            before = set(held)
            imported(calendar, held)
            once = dict(held)
            imported(icalendar.Calendar.from_ical(data), held)
            check(held.keys() == once.keys(), f"{name}: importing twice doubles something")
            check(not before or before & set(ids), f"{name}: shares no UID with the one before")
        # Never more events than there are kinds of thing to be due for, however often exported.
        strips = len(json.loads(garden.read_text(encoding="utf-8")).get("strips", []))
        check(len(held) <= 3 + strips, f"{garden.stem}: {len(held)} events after three imports")
        uids += held
    check(len(set(uids)) == len(uids), "two gardens share a UID")
    ran = run("calendar", gardens[0], "-o", pathlib.Path(folder) / "no-such-folder" / "a.ics")
    check(ran.returncode == 2 and ran.stderr.count(b"\n") == 1, "a folder that isn't there is no fault")

print("\n".join(faults) or f"{len(uids)} reminders read back")
sys.exit(bool(faults))
