"""Holds the program's JSON against docs/assessment.schema.json, and the schema against the JSON.

usage: schema_check.py PROJECT_FOLDER PROGRAM

The judge is python3-jsonschema (Draft 2020-12). Every field that the program writes must be named
in the schema, so that none stays undocumented, and a document with a field taken away must be
refused, so that the schema can fail.
"""

import copy
import json
import pathlib
import subprocess
import sys
import tempfile

from jsonschema import Draft202012Validator

project, program = pathlib.Path(sys.argv[1]), sys.argv[2]
schema = json.loads((project / "docs/assessment.schema.json").read_text())
Draft202012Validator.check_schema(schema)
validator = Draft202012Validator(schema)
faults = []


def answer(*arguments):
    ran = subprocess.run([program, *map(str, arguments)], capture_output=True, text=True)
    return json.loads(ran.stdout)


def definition(part):
    """The part itself, with what it refers to; of alternatives the one that is not null."""
    while True:
        if "$ref" in part:
            part = schema["$defs"][part["$ref"].removeprefix("#/$defs/")]
        elif "anyOf" in part:
            part = part["anyOf"][0]
        else:
            return part


def undocumented(value, part, path):
    part = definition(part)
    if isinstance(value, dict):
        known = part.get("properties", {})
        for name, item in value.items():
            if name in known:
                undocumented(item, known[name], f"{path}/{name}")
            else:
                faults.append(f"{path}/{name} is not in the schema")
    elif isinstance(value, list):
        for i, item in enumerate(value):
            undocumented(item, part.get("items", {}), f"{path}/{i}")


def hold(name, document, kind):
    for error in validator.iter_errors(document):
        where = max([error, *error.context], key=lambda e: len(e.absolute_path))
        faults.append(f"{name}: /{'/'.join(map(str, where.absolute_path))}: {where.message}")
    undocumented(document, {"$ref": f"#/$defs/{kind}"}, name)
    for field in document:
        without = copy.deepcopy(document)
        del without[field]
        if validator.is_valid(without):
            faults.append(f"{name}: is accepted without {field}")


gardens = sorted((project / "trees/examples").glob("*.json"))
if len(gardens) < 3:
    faults.append("fewer than three example gardens")
for garden in gardens:
    for date in "2025-01-14", "2025-07-14":
        hold(f"assess {garden.stem}", answer("assess", garden, "--json", "--date", date), "assessment")
    limb = json.loads(garden.read_text())["trees"][0]["limbs"][-1]["id"]
    hold(f"explain {garden.stem}", answer("assess", garden, "--json", "--explain", limb), "explanation")
    hold(f"suggest {garden.stem}", answer("suggest", garden, "--json"), "suggestions")
    goals = answer("suggest", garden, "--json", "--relief", "90 %", "--bear", "70 km/h", "--lose", "no-such-limb")
    hold(f"suggest {garden.stem} with goals", goals, "suggestions")
    hold(f"headroom {garden.stem}", answer("headroom", garden, "--json"), "headroom")
    hold(f"light {garden.stem}", answer("light", garden, "--json"), "light")
    hold(f"diary {garden.stem}", answer("diary", garden, "--json", "--date", "2025-07-14"), "diary")
    hold(f"due {garden.stem}", answer("due", garden, "--json", "--date", "2025-07-14"), "due_list")
    hold(f"check {garden.stem}", answer("check", garden, "--json"), "check")
hold("check", answer("check", project / "tests/broken/zero-diameter.json", "--json"), "check")
with tempfile.TemporaryDirectory() as folder:
    made, json_form, saved = (f"{folder}/{name}" for name in ("a.underbough", "a.json", "b.underbough"))
    hold("import", answer("import", gardens[0], made, "--json"), "transfer")
    hold("check of a garden file", answer("check", made, "--json"), "check")
    hold("export", answer("export", made, json_form, "--json"), "transfer")
    hold("recover", answer("recover", made, saved, "--json"), "recovery")
    for way, form in ("import and export", json_form), ("recover", saved):
        if answer("headroom", form, "--json") != answer("headroom", gardens[0], "--json"):
            faults.append(f"{way} changed the garden")
hold("day", answer("day", "--air", "39 C", "--gust", "12 m/s", "--json"), "day")
hold("sun", answer("sun", "--lat", "52", "--lon", "5", "--at", "2025-06-21T12:00:00Z"), "sun")

print("\n".join(faults) or "every answer fits the schema")
sys.exit(bool(faults))
