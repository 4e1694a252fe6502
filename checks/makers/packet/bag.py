"""Sums of some files by Python's hashlib, in the lines that RFC 8493, 2.1.3, asks for.

Usage: python3 bag.py > checks/fixtures/packet/bag.json
"""

import hashlib
import json
import platform

PAYLOAD = {
    "packet.pdf": "pages",
    "pictures/front.jpg": "front",
    "pictures/50% back.jpg": "back",
    "pictures/밀물종 토끼.jpg": "hare",
}


def line(name: str, text: str) -> str:
    sum_ = hashlib.sha512(text.encode()).hexdigest()
    return f"{sum_}  data/{name.replace('%', '%25')}"


answer = {
    "python": platform.python_version(),
    "payload": PAYLOAD,
    "manifest": sorted(line(name, text) for name, text in PAYLOAD.items()),
    "oxum": f"{sum(len(text) for text in PAYLOAD.values())}.{len(PAYLOAD)}",
}
print(json.dumps(answer, ensure_ascii=False, indent=1))
