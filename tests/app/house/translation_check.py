"""Holds the German translation, and the English plurals, against the sentences of today's source.

    translation_check.py PROJECT

lupdate gathers the sentences anew. Each must have a finished translation with the same places for
figures, and plurals both forms. Skipped (77) where lupdate is missing.
"""

import collections
import csv
import json
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as ElementTree

SKIPPED = 77
FORMS = 2  # one, and all others


def sentences(file):
    """(context, English, remark) -> message element"""
    found = {}
    for context in ElementTree.parse(file).getroot().findall("context"):
        for message in context.findall("message"):
            key = (context.findtext("name"), message.findtext("source") or "",
                   message.findtext("comment") or "")
            found[key] = message
    return found


def places(text):
    return collections.Counter(set(re.findall(r"%(?:L?\d+|n)", text)))


def faults_of(english, message):
    translation = message.find("translation")
    numerus = message.get("numerus") == "yes"
    forms = ([form.text or "" for form in translation.findall("numerusform")]
             if numerus else [translation.text or ""])
    if translation.get("type"):
        yield "is " + translation.get("type")
    if numerus and len(forms) != FORMS:
        yield f"has {len(forms)} forms for numbers"
    for number, form in enumerate(forms):
        if not form.strip(" ") and english.strip(" "):
            yield "is empty"
        one = numerus and number == 0  # "Der eine Warnhinweis" needs no figure
        lost = places(english) - places(form)
        if (lost and not (one and set(lost) == {"%n"})) or places(form) - places(english):
            yield f"has other places for figures: {form!r}"
        if english[:1] == " " != form[:1] or english[-1:] == " " != form[-1:]:
            yield f"lost a space at its edge: {form!r}"
        if english.count("\u00a0") != form.count("\u00a0"):
            yield f"has other spaces that keep lines together: {form!r}"
        # No translation may call safe what the English does not speak of.
        if re.search(r"\b(un)?sicher(e[rnms]?)?\b", form) and not re.search(r"\bsafe\b", english):
            yield f"speaks of safety: {form!r}"


def gathered(project):
    lupdate = shutil.which("lupdate", path="/usr/lib/qt6/bin") or shutil.which("lupdate")
    if not lupdate:
        print("lupdate is missing (Debian: qt6-l10n-tools)")
        sys.exit(SKIPPED)
    with tempfile.TemporaryDirectory() as folder:
        file = pathlib.Path(folder) / "today_de.ts"
        subprocess.run([lupdate, "app", "qml", "-I", ".", "-silent", "-locations", "none",
                        "-source-language", "en", "-target-language", "de", "-ts", str(file)],
                       cwd=project, check=True, stderr=subprocess.DEVNULL)
        return sentences(file)


def plant_names(project):
    names = set()
    for table in ("wood", "plants"):
        with open(project / "trees" / f"{table}.csv", encoding="utf-8") as file:
            for row in csv.DictReader(line for line in file if not line.startswith("#")):
                names.add(("Plants", row["common"].split(" (")[0], ""))
    return names


def example_words(project):
    """What app/words/example_words.cpp puts into another language."""
    words = set()
    for file in (project / "trees" / "examples").glob("*.json"):
        garden = json.loads(file.read_text(encoding="utf-8"))
        limbs = [limb for tree in garden["trees"] for limb in tree["limbs"]]
        things = [garden, *garden["trees"], *limbs]
        for kind in ("plantings", "strips", "structures", "electric_lines"):
            things += garden.get(kind, [])
        words.update(thing.get("name") for thing in things)
        words.update(defect.get("note") for limb in limbs for defect in limb.get("defects", []))
        for tree in garden["trees"]:
            for visit in tree.get("visits", []):
                words.update((visit.get("by"), visit.get("note")))
    return {("Examples", text, "") for text in words if text}


def main():
    project = pathlib.Path(sys.argv[1])
    faults = []
    today = gathered(project)
    counted = {key for key, message in today.items() if message.get("numerus") == "yes"}
    for file, wanted in (("underbough_de.ts", set(today)), ("underbough_en.ts", counted),
                         ("plants_de.ts", plant_names(project)),
                         ("examples_de.ts", example_words(project))):
        there = sentences(project / "app" / "language" / file)
        faults += [f"{file}: missing: {key}" for key in sorted(wanted - set(there))]
        faults += [f"{file}: no longer in the source: {key}" for key in sorted(set(there) - wanted)]
        for key, message in there.items():
            faults += [f"{file}: {key[0]}: {key[1]!r} {fault}" for fault in faults_of(key[1], message)]
        print(f"{file}: {len(there)} translations")
    print("\n".join(faults))
    if faults:
        print("DEVELOPERS.md tells how to renew them.")
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
