"""Cuts of the house's fonts read by fontTools, which shares no code with what cuts them.

Usage: python3 read.py FOLDER > checks/fixtures/fonts/read.json
FOLDER holds what `npx tsx checks/makers/fonts/make.ts FOLDER` wrote.
"""

import hashlib
import json
import pathlib
import sys

import fontTools
from fontTools.ttLib import TTFont

read = []
for path in sorted(pathlib.Path(sys.argv[1]).iterdir()):
    font = TTFont(path, checkChecksums=2)
    names = {i: font["name"].getDebugName(i) for i in (1, 2)}
    read.append(
        {
            "file": path.name,
            "sha256": hashlib.sha256(path.read_bytes()).hexdigest(),
            "family": names[1],
            "style": names[2],
            "weight": font["OS/2"].usWeightClass,
            "axes": "fvar" in font,
            "letters": "".join(map(chr, sorted(font.getBestCmap()))),
        }
    )
print(json.dumps({"fontTools": fontTools.version, "fonts": read}, ensure_ascii=False, indent=1))
