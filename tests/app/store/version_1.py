"""Writes version-1.underbough, a garden file of the first form, without any code of the program.

usage: version_1.py FILE

It is kept for good: the program must read every form it ever wrote. The garden is invented. The
checksum is zlib's crc32 over each value followed by the byte 0x1f (docs/garden-file.md).
"""

import json
import sqlite3
import struct
import sys
import zlib


def crc(*values):
    sum_ = 0
    for value in values:
        data = value if isinstance(value, bytes) else str(value).encode()
        sum_ = zlib.crc32(data + b"\x1f", sum_)
    return sum_


def png(width, height):
    def chunk(name, data):
        return struct.pack(">I", len(data)) + name + data + struct.pack(">I", zlib.crc32(name + data))

    rows = b"".join(b"\0" + b"\x40\x80\x30" * width for _ in range(height))
    head = struct.pack(">IIBBBBB", width, height, 8, 2, 0, 0, 0)
    return (b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", head) + chunk(b"IDAT", zlib.compress(rows))
            + chunk(b"IEND", b""))


garden = {"format": "underbough-garden", "version": 1, "name": "Kept for good",
          "place": {"latitude_deg": 52.1, "longitude_deg": 4.3, "altitude_m": 2,
                    "time_zone": "Europe/Amsterdam"},
          "exposure": "scattered", "design_gust_m_s": 26}
pear = {"id": "pear", "name": "pear by the shed", "species": "Pyrus communis",
        "position_m": [3, 4.5], "vigour": "mature",
        "photos": [{"file": "pear.png", "note": "from the gate"}]}
stem = {"id": "stem", "name": "", "attached_at_m": 0,
        "stations": [{"position_m": [0, 0, 0], "diameter_m": 0.21},
                     {"position_m": [0.1, 0, 3.8], "diameter_m": 0.05}],
        "union": "sound", "measured": "taped",
        "foliage": {"from_m": 1.5, "radius_m": 0.9}}
visits = [{"id": "2019-winter", "date": "2019-02-10", "by": "Jo", "leaf_share": 0.1,
           "note": "first shaping"},
          {"id": "2020-winter", "date": "2020-02-02", "by": "", "next_due": "2022-02-01"}]
parts = [("garden", "", "", 0, garden), ("trees", "", "pear", 0, pear),
         ("limbs", "pear", "stem", 0, stem)]
parts += [("visits", "pear", visit["id"], place, visit) for place, visit in enumerate(visits)]

db = sqlite3.connect(sys.argv[1])
db.executescript("""
PRAGMA application_id = 0x55626768;
PRAGMA user_version = 1;
CREATE TABLE head(id INTEGER PRIMARY KEY CHECK(id = 1), key TEXT NOT NULL,
  edition INTEGER NOT NULL, parts_sum INTEGER NOT NULL, crc INTEGER NOT NULL);
CREATE TABLE part(kind TEXT NOT NULL, tree TEXT NOT NULL, id TEXT NOT NULL, place INTEGER NOT NULL,
  document TEXT NOT NULL, crc INTEGER NOT NULL, PRIMARY KEY(kind, tree, id));
CREATE TABLE photo(name TEXT PRIMARY KEY NOT NULL, bytes BLOB NOT NULL, crc INTEGER NOT NULL);
CREATE VIEW tree AS SELECT id, json_extract(document, '$.name') AS name,
  json_extract(document, '$.species') AS species,
  json_extract(document, '$.position_m[0]') AS east_m,
  json_extract(document, '$.position_m[1]') AS north_m,
  json_extract(document, '$.planted_year') AS planted_year
  FROM part WHERE kind = 'trees' ORDER BY place;
CREATE VIEW visit AS SELECT tree, id, json_extract(document, '$.date') AS date,
  json_extract(document, '$.by') AS by, json_extract(document, '$.leaf_share') AS leaf_share,
  json_extract(document, '$.note') AS note, json_extract(document, '$.next_due') AS next_due
  FROM part WHERE kind = 'visits' ORDER BY tree, place;
""")
total = 0
for kind, tree, id_, place, document in parts:
    text = json.dumps(document)
    sum_ = crc(kind, tree, id_, place, text)
    total += sum_
    db.execute("INSERT INTO part VALUES(?, ?, ?, ?, ?, ?)", (kind, tree, id_, place, text, sum_))
photo = png(512, 256)
db.execute("INSERT INTO photo VALUES(?, ?, ?)", ("pear.png", photo, crc("pear.png", photo)))
key, edition = "5f0c9a52-6e0e-4f4e-9f7a-3a1d1c2b7e10", 4
db.execute("INSERT INTO head VALUES(1, ?, ?, ?, ?)", (key, edition, total, crc(key, edition, total, 0)))
db.commit()
db.close()
