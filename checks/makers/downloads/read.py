"""What other programs find in a feed and a zip that Printlore wrote: feedparser and Python's zipfile.

Reads revisions.atom and research.zip of checks/fixtures/downloads and prints read.json.
Run with Debian's python3 and python3-feedparser.
"""
import csv
import io
import json
import pathlib
import zipfile
import feedparser

folder = pathlib.Path(__file__).parents[2] / "fixtures" / "downloads"
feed = feedparser.parse((folder / "revisions.atom").read_bytes())
archive = zipfile.ZipFile(folder / "research.zip")
assert archive.testzip() is None
tables = {
    info.filename: [row for row in csv.reader(io.StringIO(archive.read(info).decode("utf-8"), newline=""))]
    for info in archive.infolist()
    if info.filename.endswith(".csv")
}
print(json.dumps({
    "made_with": f"feedparser {feedparser.__version__}",
    "feed": {
        "well_formed": not feed.bozo,
        "version": feed.version,
        "title": feed.feed.title,
        "id": feed.feed.id,
        "updated": feed.feed.updated,
        "author": feed.feed.author,
        "entries": [{"title": e.title, "id": e.id, "updated": e.updated, "content": e.content[0].value} for e in feed.entries],
    },
    "zip": {"dates": sorted({str(info.date_time) for info in archive.infolist()}), "tables": tables},
}, ensure_ascii=False, indent=1))
