"""SHA-512 of the demo's research half as docs/guide/revisions.md defines it, by Python's csv and json.

Prints checks/fixtures/revisions/demo.json.
"""
import csv
import hashlib
import json
import pathlib

root = pathlib.Path(__file__).parents[3] / "demo" / "dossier"
units = lambda text: text.encode("utf-16-be")
compact = lambda value: json.dumps(value, ensure_ascii=False, separators=(",", ":"))
texts = {}
for path in root.glob("*.csv"):
    rows = list(csv.DictReader(path.open(encoding="utf-8-sig", newline="")))
    cell = lambda row, column: (row[column] or "").strip()
    used = sorted((c for c in (rows[0] if rows else []) if any(cell(r, c) for r in rows)), key=units)
    lines = sorted((compact([cell(row, c) for c in used]) for row in rows), key=units)
    texts[path.name] = "".join(line + "\n" for line in [compact(used), *lines])
for path in root.glob("story/*.md"):
    texts[f"story/{path.name}"] = path.read_text(encoding="utf-8-sig")
manifest = json.loads((root / "dossier.json").read_text(encoding="utf-8"))
texts["dossier.json"] = json.dumps(manifest, ensure_ascii=False, separators=(",", ":"), sort_keys=True)
sha = lambda text: hashlib.sha512(text.encode("utf-8")).hexdigest()
files = {name: sha(texts[name]) for name in sorted(texts, key=units)}
listed = "".join(f"{hash}  {name}\n" for name, hash in files.items())
print(json.dumps({"sha512": sha(listed), "files": files}, indent=1))
