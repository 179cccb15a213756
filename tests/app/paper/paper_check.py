"""Reads what `underbough report` writes with readers that are not ours.

usage: paper_check.py PROJECT_FOLDER PROGRAM EXAMPLE

PDF: poppler's pdfinfo, pdffonts and pdftotext, and qpdf --check. HTML: Python's html.parser. CSV:
Python's csv, strict. Pictures: their PNG heads.
"""

import base64
import csv
import html.parser
import json
import os
import pathlib
import re
import struct
import subprocess
import sys
import tempfile

project, program, example = pathlib.Path(sys.argv[1]), sys.argv[2], sys.argv[3]
examples = project / "trees/examples"
folder = pathlib.Path(tempfile.mkdtemp())


def two_trees():
    """The apple's garden with the birch in it as well, 20 m to the east."""
    told = json.loads((examples / "apple-path.json").read_text())
    birch = json.loads((examples / "birch-lawn.json").read_text())["trees"][0]
    birch["position_m"][0] += 20
    for part in "visits", "goals":
        birch.pop(part, None)
    told["trees"].append(birch)
    there = folder / "two-trees.json"
    there.write_text(json.dumps(told))
    return there


garden = two_trees() if example == "two-trees" else examples / (example + ".json")
known = json.loads(garden.read_text())
faults = []
environment = dict(os.environ, LC_ALL="C.UTF-8", TZ="UTC")


def hold(true, what):
    if not true:
        faults.append(f"{example}: {what}")


def run(*words):
    return subprocess.run([*map(str, words)], capture_output=True, env=environment)


def report(*words):
    ran = run(program, "report", garden, "--units", "metric", "--date", "2025-11-20", *words)
    hold(ran.returncode == 0, f"report {words}: {ran.stderr.decode()}")
    return ran.stdout


def text_of(pdf):
    return re.sub(r"\s+", " ", run("pdftotext", pdf, "-").stdout.decode())


def words_within(pdf, width, height):
    """Every word lies on its page, inside the margins."""
    boxes = run("pdftotext", "-bbox", pdf, "-").stdout.decode()
    words = re.findall(r'<word xMin="(.*?)" yMin="(.*?)" xMax="(.*?)" yMax="(.*?)">', boxes)
    hold(len(words) > 200, f"only {len(words)} words on paper")
    for box in words:
        left, top, right, bottom = map(float, box)
        if left < 40 or right > width - 40 or top < 36 or bottom > height - 30:
            faults.append(f"{example}: a word lies outside the margins: {box}")
            return


def check_pdf(paper, width, height):
    pdf = folder / f"{paper}.pdf"
    report("-o", pdf, "--paper", paper)
    checked = run("qpdf", "--check", pdf)
    hold(checked.returncode == 0, checked.stdout.decode() + checked.stderr.decode())
    info = run("pdfinfo", pdf).stdout.decode()
    size = re.search(r"Page size: +([\d.]+) x ([\d.]+)", info)
    hold(abs(float(size[1]) - width) < 1 and abs(float(size[2]) - height) < 1, f"size {size[0]}")
    pages = int(re.search(r"Pages: +(\d+)", info)[1])
    fonts = run("pdffonts", pdf).stdout.decode().splitlines()[2:]
    hold(fonts and all(re.search(r" yes +(yes|no) +(yes|no) +\d+ +\d+$", line) for line in fonts),
         f"letters that are not embedded: {fonts}")
    text = text_of(pdf)
    for number in range(1, pages + 1):
        hold(f"Page {number} of {pages}" in text, f"page {number} is not numbered")
    tree = known["trees"][0]
    for words in (tree["name"], known["name"], "20 November 2025", "Before you trust or touch",
                  "Where the figures come from", "Notes", "The cuts, in working order"):
        hold(words.lower() in text.lower(), f"not on paper: {words}")
    words_within(pdf, width, height)
    return text


class Reader(html.parser.HTMLParser):
    def __init__(self):
        super().__init__()
        self.open, self.images, self.text, self.links = [], [], [], []

    def handle_starttag(self, tag, attributes):
        attributes = dict(attributes)
        if tag == "img":
            self.images.append(attributes)
        elif tag not in ("meta", "br"):
            self.open.append(tag)
        self.links += [value for name, value in attributes.items()
                       if name in ("src", "href") and not value.startswith("data:")]

    def handle_endtag(self, tag):
        hold(self.open and self.open.pop() == tag, f"HTML: </{tag}> closes nothing")

    def handle_data(self, data):
        self.text.append(data)


def is_png(data):
    return data[:8] == b"\x89PNG\r\n\x1a\n" and min(struct.unpack(">II", data[16:24])) > 200


def check_html():
    page = folder / "work.html"
    report("-o", page, "--figures", folder / "figures")
    reader = Reader()
    reader.feed(page.read_text(encoding="utf-8"))
    hold(not reader.open, f"HTML: left open: {reader.open}")
    hold(not reader.links, f"HTML: needs other files: {reader.links}")
    hold(len(reader.images) >= 3, "HTML: figures are missing")
    for image in reader.images:
        hold(image.get("alt"), "HTML: a figure without words for who can't see it")
        hold(is_png(base64.b64decode(image["src"].split(",", 1)[1])), "HTML: not a PNG")
    hold("Before you trust or touch" in " ".join(reader.text), "HTML: no cautions")
    pictures = sorted((folder / "figures").glob("*.png"))
    hold(len(pictures) == len(reader.images), f"figures: {pictures}")
    for picture in pictures:
        hold(is_png(picture.read_bytes()), f"{picture.name} is no PNG")


def records(table):
    raw = report("--csv", table, "-o", "-").decode("utf-8")
    hold(raw.endswith("\r\n") and "\n" not in raw.replace("\r\n", ""), f"{table}: line ends")
    rows = list(csv.reader(raw.splitlines(keepends=True), strict=True))
    hold(all(len(row) == len(rows[0]) for row in rows), f"{table}: ragged")
    return [dict(zip(rows[0], row)) for row in rows[1:]]


def check_csv():
    inventory = records("inventory")
    hold([row["id"] for row in inventory] == [tree["id"] for tree in known["trees"]], "trees")
    hold(inventory[0]["name"] == known["trees"][0]["name"], "name")
    hold(float(inventory[0]["height_m"]) > 1, "height")
    hold(len(records("visits")) == sum(len(tree.get("visits", [])) for tree in known["trees"]),
         "visits")
    loads = records("loads")
    hold([row["limb_id"] for row in loads] ==
         [limb["id"] for tree in known["trees"] for limb in tree["limbs"]], "limbs")
    for row in loads:
        gusts = [row[f"breaking_gust_p{p}_m_s"] for p in (10, 50, 90)]
        if all(gusts):
            hold(float(gusts[0]) <= float(gusts[1]) <= float(gusts[2]), f"gusts {row}")


def with_photos():
    """The garden with three photos, which are its own figures."""
    report("--figures", folder)
    shots = sorted(folder.glob("*.png"))[:3]
    there = folder / "with-photos.json"
    told = json.loads(garden.read_text())
    told["trees"][0]["photos"] = [{"file": shot.name, "note": f"Seen from side {i}"}
                                  for i, shot in enumerate(shots)]
    there.write_text(json.dumps(told))
    return there


def check_photos():
    there, pdf = with_photos(), folder / "photos.pdf"
    for paper in "a4", "letter":
        ran = run(program, "report", there, "--units", "metric", "--date", "2025-11-20", "-o", pdf,
                  "--for-arborist", "--paper", paper)
        hold(ran.returncode == 0, ran.stderr.decode())
        hold("Seen from side 2" in text_of(pdf), "no words under a photo")
        info = run("pdfinfo", pdf).stdout.decode()
        pages = int(re.search(r"Pages: +(\d+)", info)[1])
        hold(pages == len(known["trees"]), f"the brief with photos takes {pages} pages on {paper}")
        hold(len(run("pdfimages", "-list", pdf).stdout.decode().splitlines()) >= 2 + 3, "no photos")


def check_brief():
    for paper in "a4", "letter":
        pdf = folder / "brief.pdf"
        report("-o", pdf, "--for-arborist", "--paper", paper)
        info = run("pdfinfo", pdf).stdout.decode()
        pages = int(re.search(r"Pages: +(\d+)", info)[1])
        hold(pages == len(known["trees"]), f"the brief takes {pages} pages on {paper}")
        text = text_of(pdf)
        for words in ("What is wanted", "What was seen", "What to ask", "Insured", "Access"):
            hold(words in text, f"not in the brief: {words}")


def check_garden():
    """A page of the whole garden, then each tree's own, all in one count of pages."""
    pdf = folder / "garden.pdf"
    report("-o", pdf, "--paper", "a4")
    pages = int(re.search(r"Pages: +(\d+)", run("pdfinfo", pdf).stdout.decode())[1])
    by_page = [re.sub(r"\s+", " ", run("pdftotext", "-f", n, "-l", n, pdf, "-").stdout.decode())
               for n in range(1, pages + 1)]
    hold(known["name"] in by_page[0], "the first page isn't the garden's")
    for tree in known["trees"]:
        hold(tree["name"].lower() in by_page[0].lower(), f"{tree['name']} is not in the garden's list")
        starts = [n for n, text in enumerate(by_page) if f"{tree['name']}\u201d: the work".lower() in text.lower()]
        hold(len(starts) == 1 and starts[0] > 0, f"{tree['name']} starts on pages {starts}")
    for number, text in enumerate(by_page, 1):
        hold(f"Page {number} of {pages}" in text, f"page {number} is not numbered")
    words_within(pdf, 595, 842)


def check_refusals():
    for words in (("-o", folder / "work.doc"), ("-o", "/no/such/folder/work.pdf"), ()):
        ran = run(program, "report", garden, *words)
        hold(ran.returncode == 2 and len(ran.stderr.decode().splitlines()) == 1,
             f"{words}: {ran.returncode} {ran.stderr.decode()}")


# One of each kind for every example would take the machine too long.
if example == "apple-path":
    check_pdf("a4", 595, 842)
    check_html()
    check_refusals()
elif example == "two-trees":
    check_garden()
    check_csv()
elif example == "maple-drive":
    check_pdf("letter", 612, 792)
    check_csv()
else:
    check_pdf("a4", 595, 842)
    check_brief()
    check_photos()

print("\n".join(faults) or "the papers read well")
sys.exit(bool(faults))
