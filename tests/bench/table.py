#!/usr/bin/env python3
"""Writes docs/benchmarks.md from what the benchmarks have left, one JSON file each.

Usage: table.py FOLDER PAGE

`tests/run --bench` runs them all and then this. Figures that can be compared are told as ratios within
one run of one program; the bare times below them are this machine's.
"""
import json
import pathlib
import sys

# What is compared: program, the slower, the faster, what that shows.
RATIOS = [
    ("light_bench", "seasonRayByRay/60", "seasonByPacks/60",
     "a season's light ray by ray in double precision, against eight rays at once"),
    ("ray_tracer_bench", "seasonByTracerRayByRay/60", "seasonByUs/60",
     "the same rays through Embree one by one, 60 bodies"),
    ("ray_tracer_bench", "seasonByTracerInPackets/60", "seasonByUs/60",
     "the same in packets of eight"),
    ("ray_tracer_bench", "seasonByTracerRayByRay/1000", "seasonByUs/1000",
     "the same one by one, 1000 bodies"),
    ("ray_tracer_bench", "seasonByTracerInPackets/1000", "seasonByUs/1000",
     "the same in packets of eight"),
    ("light_bench", "wholeGarden/1", "wholeGarden/0",
     "a garden's year with each limb told apart, against trees only"),
    ("load_bench", "wholeTree", "oneLimbMoved/lateral",
     "loads of 60 limbs from nothing, against a lateral that is dragged"),
    ("load_bench", "wholeTree", "oneLimbMoved/scaffold",
     "the same, a scaffold limb"),
    ("load_bench", "foliageOfTheTree", "foliageAfterADrag",
     "leaf of 60 limbs from nothing, against one that moved"),
]

# How time grows: program, family, what its number counts.
GROWTH = [
    ("light_bench", "seasonByPacks", "leafy bodies"),
    ("suggest_bench", "suggestion", "pieces"),
    ("suggest_bench", "additivePart", "pieces"),
]

NOT_COUNTERS = {
    "name", "family_index", "per_family_instance_index", "run_name", "run_type", "repetitions",
    "repetition_index", "threads", "iterations", "real_time", "cpu_time", "time_unit",
    "aggregate_name", "aggregate_unit", "error_occurred", "error_message",
}
IN_SECONDS = {"ns": 1e-9, "us": 1e-6, "ms": 1e-3, "s": 1.0}


def runs(folder):
    """Runs by program and name; of repetitions the median."""
    found = {}
    for path in sorted(folder.glob("*.json")):
        for run in json.loads(path.read_text())["benchmarks"]:
            if run.get("error_occurred"):
                sys.exit(f"{path.stem}: {run['name']}: {run['error_message']}")
            if run["run_type"] == "aggregate" and run["aggregate_name"] != "median":
                continue
            name = run["run_name"].replace("/real_time", "")
            name = "/".join(part for part in name.split("/") if not part.startswith(
                ("iterations:", "repeats:")))
            kept = found.setdefault(path.stem, {})
            if run["run_type"] == "aggregate" or name not in kept:
                kept[name] = run
    return found


def seconds(run):
    """By the clock where the benchmark asked for it, else of the processor."""
    clock = run["run_name"].endswith("real_time")
    return (run["real_time"] if clock else run["cpu_time"]) * IN_SECONDS[run["time_unit"]]


def plain(value):
    return f"{value:.3g}" if abs(value) < 1000 else f"{value:,.0f}".replace(",", " ")


def told(value_s):
    for unit, size in (("s", 1.0), ("ms", 1e-3), ("us", 1e-6)):
        if value_s >= size:
            return f"{plain(value_s / size)} {unit}"
    return f"{plain(value_s / 1e-9)} ns"


def counters(run):
    return {key: value for key, value in run.items() if key not in NOT_COUNTERS}


def described(key, value):
    return f"{key.replace('_', ' ')} {plain(value)}"


def machine():
    cpu = next((line.split(":", 1)[1].strip() for line in open("/proc/cpuinfo")
                if line.startswith("model name")), "unknown processor")
    flags = next((line for line in open("/proc/cpuinfo") if line.startswith("flags")), "")
    memory = next(line for line in open("/proc/meminfo") if line.startswith("MemTotal"))
    cores = sum(line.startswith("processor") for line in open("/proc/cpuinfo"))
    return (f"{cpu}, {cores} cores of a shared server, {'AVX2' if ' avx2 ' in flags else 'no AVX2'}, "
            f"{int(memory.split()[1]) / 1e6:.0f} GB")


def ratio_lines(found):
    yield "| what | slower | faster | times |"
    yield "|---|---|---|---|"
    for program, slower, faster, shows in RATIOS:
        both = found.get(program, {})
        if slower in both and faster in both:
            a, b = seconds(both[slower]), seconds(both[faster])
            yield f"| {shows} | {told(a)} | {told(b)} | {plain(a / b)} |"
    for name, run in found.get("suggest_bench", {}).items():
        if "glpk_s" in run:
            pieces = name.split(":")[-1]
            yield (f"| least leaf where all adds up, {pieces} pieces: GLPK, against this search (mean of 20; "
                   f"same answer {run['same']:.0f}) | {told(run['glpk_s'])} | {told(run['ours_s'])} "
                   f"| {plain(run['glpk_s'] / run['ours_s'])} |")


def size_of(name):
    return float(name.split("/")[1].split(":")[-1])


def growth_lines(found, program, family, counts):
    own = [(size_of(name), run) for name, run in found.get(program, {}).items()
           if name.split("/")[0] == family]
    if not own:
        return
    yield f"`{family}`, by {counts}:"
    yield ""
    names = list(counters(own[0][1]))
    yield "| " + " | ".join([counts, "time", "times the size before", "times its time"] +
                            [name.replace("_", " ") for name in names]) + " |"
    yield "|---" * (4 + len(names)) + "|"
    before = None
    for size, run in sorted(own, key=lambda pair: pair[0]):
        time = seconds(run)
        steps = [plain(size / before[0]), plain(time / before[1])] if before else ["", ""]
        figures = [plain(run[name]) for name in names]
        yield "| " + " | ".join([plain(size), told(time)] + steps + figures) + " |"
        before = size, time
    yield ""


def page(found):
    yield "# Benchmarks"
    yield ""
    yield ("Written by `tests/run --bench` (tests/bench/table.py), never by hand. Times are of the processor, where "
           "a name doesn't say otherwise; other work may have run beside them, so what can be compared are the ratios, each "
           "within one run of one program. What is timed stands at the head of each file of `tests/bench`, and what "
           "it means in the pages of [methods](methods/README.md).")
    yield ""
    yield f"Machine: {machine()}."
    yield ""
    yield "## Ratios"
    yield ""
    yield from ratio_lines(found)
    yield ""
    yield "## Growth"
    yield ""
    for program, family, counts in GROWTH:
        yield from growth_lines(found, program, family, counts)
    yield "## All"
    for program, own in found.items():
        yield ""
        yield f"`{program}`"
        yield ""
        yield "| benchmark | time | besides |"
        yield "|---|---|---|"
        for name, run in own.items():
            besides = ", ".join(described(key, value) for key, value in counters(run).items())
            yield f"| {name} | {told(seconds(run))} | {besides} |"


def main():
    if len(sys.argv) != 3:
        sys.exit(__doc__)
    found = runs(pathlib.Path(sys.argv[1]))
    if not found:
        sys.exit(f"table.py: {sys.argv[1]} holds no results, expected one JSON file a benchmark")
    pathlib.Path(sys.argv[2]).write_text("\n".join(page(found)) + "\n")


main()
