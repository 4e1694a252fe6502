#!/usr/bin/env python3
"""Witness of Japanese numbers and dates as they are read: the text analysis of Open JTalk.

Debian's open-jtalk, open-jtalk-mecab-naist-jdic and hts-voice-nitech-jp-atr503-m001 (non-free). The
tenth column of its trace is the pronunciation of each word in katakana, long vowels as a bar.

  python3 checks/makers/spoken/japanese.py > checks/fixtures/film/japanese.json
"""
import glob
import json
import subprocess
import sys
import tempfile

NUMBERS = sorted(
    set(range(1, 101))
    | {101, 200, 300, 301, 400, 500, 600, 617, 700, 800, 888, 900, 999, 1001, 1234, 1998, 2003, 3000}
    | {3600, 8000, 8800, 9999, 10000, 12345, 54321, 96000, 110000, 234567, 2345678, 10000000}
)
TEXTS = (
    [str(n) for n in NUMBERS]
    + [f"{n}枚" for n in list(range(1, 41)) + [104, 300, 777, 1234]]
    + [f"{n}点" for n in (1, 2, 3, 5, 8, 10, 11, 18, 20, 26)]
    + [f"{n}%" for n in (2, 5, 12, 33, 47, 95, 97)]
    + [f"{y}年" for y in range(1990, 2031)]
    + [f"{m}月" for m in range(1, 13)]
    + [f"5月{d}日" for d in range(1, 32)]
    + ["1998年11月19日", "2003年4月1日", "0.97", "12.5", "1.79", "8.25", "62.3"]
)


def pronounced(text):
    with tempfile.NamedTemporaryFile(suffix=".txt") as trace:
        subprocess.run(
            ["open_jtalk", "-x", "/var/lib/mecab/dic/open-jtalk/naist-jdic"]
            + ["-m", glob.glob("/usr/share/hts-voice/*/*.htsvoice")[0]]
            + ["-ot", trace.name, "-ow", "/dev/null"],
            input=text.encode(),
            check=True,
        )
        lines = open(trace.name, encoding="utf-8").read().split("[Output label]")[0].split("\n")[1:]
    return "".join(line.split(",")[9] for line in lines if "," in line).replace("’", "")


json.dump({text: pronounced(text) for text in TEXTS}, sys.stdout, ensure_ascii=False, indent=1)
print()
