"""Holds docs/garden.schema.json against the writer's output, the broken gardens and the examples.

usage: schema_check.py PROJECT_FOLDER WRITE_SAMPLES_PROGRAM

The judge is python3-jsonschema (Draft 2020-12), which shares no code with the reader.
"""

import json
import pathlib
import re
import subprocess
import sys
import tempfile

from jsonschema import Draft202012Validator

SAMPLES = 200

# What no schema can say: how values of different places go together. The reader refuses these.
BEYOND_A_SCHEMA = {
    "attached-beyond-the-parent", "closed-before-the-visit", "crossing-outline", "defect-beyond-the-tip",
    "doubled-garden-id", "doubled-limb-id", "due-before-the-visit", "leaf-beyond-the-tip",
    "goal-leaf-in-percent", "goal-without-a-subject", "gust-without-speed", "limb-circle", "limb-from-itself", "missing-parent", "no-such-day", "no-trunk",
    "outline-without-area", "planting-of-a-square-kilometre", "prop-beyond-the-tip", "same-place-twice",
    "leaf-off-at-leaf-on", "leaf-on-no-such-day", "neighbour-crown-over-its-top",
    "thicker-than-its-parent", "thickest-wall-of-a-crack", "wall-thinner-than-the-thinnest",
    "walls-wider-than-the-limb", "trunk-in-the-air", "two-trunks", "union-off-its-parent",
    # and what Python's reader mends in silence: the last of doubled fields stands
    "doubled-field", "doubled-unknown-field",
}

faults = []


def check(good, message):
    if not good:
        faults.append(message)


def resolve(schema, part):
    """The part itself, with what it refers to."""
    name = part.get("$ref", "").removeprefix("#/$defs/")
    return {**schema["$defs"][name], **part} if name else part


def walk(schema, part, value, seen, place):
    """Every known field of a value that the schema describes; unknown ones must be the sample's."""
    part = resolve(schema, part)
    if isinstance(value, list):
        for item in value:
            if isinstance(part.get("items"), dict):
                walk(schema, part["items"], item, seen, place)
    elif isinstance(value, dict):
        for name, member in value.items():
            described = part.get("properties", {}).get(name)
            if described is None:
                check(name.startswith("x_"), f"{place}/{name} is written and not in the schema")
                continue
            seen.add((part["title"], name))
            walk(schema, described, member, seen, f"{place}/{name}")


def check_words(schema):
    """A field has a title or a meaning, and a number says its unit."""
    objects = [schema] + [d for d in schema["$defs"].values() if d.get("type") == "object"]
    units = re.compile(r"metres|degrees|kilograms|kilovolts|share", re.IGNORECASE)
    for part in objects:
        for name, field in part["properties"].items():
            where = f"{part['title']}: {name}"
            check(len(field.get("description", "")) > 8, f"{where} has no meaning")
            if resolve(schema, field).get("type") == "number":
                check(units.search(field["description"]), f"{where} has no unit")
    return {(part["title"], name) for part in objects for name in part["properties"]}


def check_samples(schema, validator, program):
    seen = set()
    with tempfile.TemporaryDirectory() as folder:
        subprocess.run([program, folder, str(SAMPLES)], check=True)
        for file in sorted(pathlib.Path(folder).glob("*.json")):
            garden = json.loads(file.read_text(encoding="utf-8"))
            for error in validator.iter_errors(garden):
                check(False, f"sample {file.name} {error.json_path}: {error.message[:200]}")
            walk(schema, schema, garden, seen, "")
    return seen


def as_json(file):
    def refuse(word):
        raise ValueError(word)

    try:
        return json.loads(file.read_bytes().decode("utf-8"), parse_constant=refuse)
    except ValueError:
        return None


def check_broken(validator, folder):
    passed = set()
    for file in sorted(folder.glob("*.json")):
        garden = as_json(file)
        if garden is not None and validator.is_valid(garden):
            passed.add(file.stem)
    check(passed == BEYOND_A_SCHEMA | {"whole"},
          f"passed or refused against expectation: {passed ^ (BEYOND_A_SCHEMA | {'whole'})}")


def check_examples(validator, folder):
    gardens = 0
    for file in sorted(folder.rglob("*.json")):
        garden = json.loads(file.read_text(encoding="utf-8"))
        gardens += 1
        for error in validator.iter_errors(garden):
            check(False, f"{file.name} {error.json_path}: {error.message[:200]}")
    return gardens


def main():
    project, program = pathlib.Path(sys.argv[1]), sys.argv[2]
    schema = json.loads((project / "docs/garden.schema.json").read_text(encoding="utf-8"))
    Draft202012Validator.check_schema(schema)
    validator = Draft202012Validator(schema)
    described = check_words(schema)
    seen = check_samples(schema, validator, program)
    check(seen == described, f"described and never written: {described - seen}")
    check_broken(validator, project / "tests/broken")
    examples = check_examples(validator, project / "trees")
    print(f"{SAMPLES} samples, {examples} examples, {len(described)} fields: {len(faults)} faults")
    for fault in faults[:20]:
        print(fault)
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
