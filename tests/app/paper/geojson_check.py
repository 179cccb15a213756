"""Holds `underbough report --geojson` to RFC 7946 and its places to an independent geodesy.

usage: geojson_check.py PROJECT_FOLDER PROGRAM

The rules are RFC 7946's own; the same checks are first held to examples of the RFC and must refuse
broken ones. Distances and bearings from the garden's origin are compared with those that
GeographicLib (python3-geographiclib, Karney's geodesics) finds between the written places.
"""

import json
import math
import pathlib
import subprocess
import sys

from geographiclib.geodesic import Geodesic

project, program = pathlib.Path(sys.argv[1]), sys.argv[2]
faults = []
DEPTH = {"Point": 0, "LineString": 1, "MultiPoint": 1, "Polygon": 2, "MultiLineString": 2,
         "MultiPolygon": 3}


def positions(coordinates, depth):
    if depth == 0:
        return [coordinates]
    return [p for part in coordinates for p in positions(part, depth - 1)]


def area(ring):
    return sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(ring, ring[1:])) / 2


def breaks(value):
    """Sections of RFC 7946 that a GeoJSON text breaks."""
    broken = []
    if value.get("type") == "FeatureCollection":
        if not isinstance(value.get("features"), list):
            return ["3.3"]
        return [rule for feature in value["features"] for rule in breaks(feature)]
    if value.get("type") == "Feature":
        if "geometry" not in value or "properties" not in value:
            broken.append("3.2")
        if "id" in value and not isinstance(value["id"], (str, int, float)):
            broken.append("3.2 id")
        return broken + (breaks(value["geometry"]) if value.get("geometry") else [])
    if value.get("type") not in DEPTH:
        return ["1.4"]
    for position in positions(value["coordinates"], DEPTH[value["type"]]):
        if not 2 <= len(position) <= 3 or not -180 <= position[0] <= 180 \
                or not -90 <= position[1] <= 90:
            broken.append("3.1.1")
    if value["type"] == "LineString" and len(value["coordinates"]) < 2:
        broken.append("3.1.4")
    polygons = {"Polygon": [value["coordinates"]], "MultiPolygon": value["coordinates"]}
    for polygon in polygons.get(value["type"], []):
        for i, ring in enumerate(polygon):
            if len(ring) < 4 or ring[0] != ring[-1]:
                broken.append("3.1.6 ring")
            if (area(ring) > 0) != (i == 0):
                broken.append("3.1.6 right-hand rule")
    return broken


# RFC 7946, 1.5 and appendix A.3: accepted as they stand.
for text in (
    '{"type":"Feature","geometry":{"type":"Point","coordinates":[102.0,0.5]},'
    '"properties":{"prop0":"value0"}}',
    '{"type":"Polygon","coordinates":[[[100.0,0.0],[101.0,0.0],[101.0,1.0],[100.0,1.0],'
    '[100.0,0.0]],[[100.8,0.8],[100.8,0.2],[100.2,0.2],[100.2,0.8],[100.8,0.8]]]}',
    '{"type":"LineString","coordinates":[[100.0,0.0],[101.0,1.0]]}',
):
    if breaks(json.loads(text)):
        faults.append(f"the judge refuses the RFC's own {text}")
for text in (
    '{"type":"Polygon","coordinates":[[[0,0],[0,1],[1,1],[1,0],[0,0]]]}',
    '{"type":"Polygon","coordinates":[[[0,0],[1,0],[1,1]]]}',
    '{"type":"Point","coordinates":[190,0]}',
    '{"type":"Feature","geometry":null}',
):
    if not breaks(json.loads(text)):
        faults.append(f"the judge accepts {text}")


def plan_of(garden):
    """Every place that the garden file draws, by the feature's id, in metres."""
    places = {tree["id"]: [tree["position_m"]] for tree in garden["trees"]}
    for kind in "plantings", "strips", "structures":
        places |= {each["id"]: each["outline_m"] for each in garden.get(kind, [])}
    places |= {each["id"]: [p[:2] for p in each["path_m"]] for each in garden.get("lines", [])}
    return places


worst_m = 0.0
for path in sorted((project / "trees/examples").glob("*.json")):
    garden = json.loads(path.read_text())
    ran = subprocess.run([program, "report", path, "--geojson", "-o", "-"], capture_output=True)
    document = json.loads(ran.stdout)
    faults += [f"{path.stem}: breaks {rule}" for rule in breaks(document)]
    if document["type"] != "FeatureCollection" or "crs" in document:
        faults.append(f"{path.stem}: is no plain FeatureCollection")
    features = {feature["id"]: feature for feature in document["features"]}
    if len(features) != len(document["features"]):
        faults.append(f"{path.stem}: an id is given twice")
    origin = garden["place"]
    for name, drawn in plan_of(garden).items():
        if name not in features:
            faults.append(f"{path.stem}: {name} is missing")
            continue
        geometry = features[name]["geometry"]
        written = positions(geometry["coordinates"], DEPTH[geometry["type"]])
        for x, y in drawn:
            errors = []
            for longitude, latitude in written:
                line = Geodesic.WGS84.Inverse(origin["latitude_deg"], origin["longitude_deg"],
                                              latitude, longitude)
                bearing = math.radians(line["azi1"])
                errors.append(math.hypot(line["s12"] * math.sin(bearing) - x,
                                         line["s12"] * math.cos(bearing) - y))
            worst_m = max(worst_m, min(errors))
if worst_m > 0.01:
    faults.append(f"a place lies {worst_m * 1000:.1f} mm off")

print("\n".join(faults) or f"every place within {worst_m * 1000:.2f} mm")
sys.exit(bool(faults))
