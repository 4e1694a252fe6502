"""Corners of a tilted card as OpenCV projects them, and points with a lens's bow taken out.

    python3 checks/makers/bench/outline.py > checks/fixtures/bench/outline.json

Seed 4, OpenCV 4.6.0, numpy 1.24.2. The bow `ideal = seen * (1 + k1 * |seen|^2)` is OpenCV's radial
model with the two sides named the other way round, so that its projection carries seen to ideal.
"""
import json

import cv2
import numpy as np

chance = np.random.default_rng(4)
WIDTH, HEIGHT = 2000, 2600
CENTRE = ((WIDTH - 1) / 2, (HEIGHT - 1) / 2)
UNIT = np.hypot(WIDTH, HEIGHT) / 2


def pose(size):
    focal = float(chance.uniform(1.0, 2.2))
    tilt = np.radians(chance.uniform(8, 34))
    towards = chance.uniform(0, 2 * np.pi)
    turn = np.radians(chance.uniform(-25, 25))
    rotation = cv2.Rodrigues(tilt * np.array([np.cos(towards), np.sin(towards), 0]))[0] @ cv2.Rodrigues(
        np.array([0, 0, turn])
    )[0]
    camera = np.array([[focal * UNIT, 0, CENTRE[0]], [0, focal * UNIT, CENTRE[1]], [0, 0, 1]])
    w, h = size
    points = np.array([[-w, -h, 0], [w, -h, 0], [w, h, 0], [-w, h, 0]]) / 2
    away = np.array([chance.uniform(-8, 8), chance.uniform(-8, 8), focal * UNIT / 18.0])
    seen, _ = cv2.projectPoints(points, cv2.Rodrigues(rotation)[0], away, camera, None)
    return {"size": size, "focal": focal, "tiltDeg": float(np.degrees(tilt)), "corners": seen[:, 0].tolist()}


def straightened(k1):
    seen = chance.uniform([0, 0], [WIDTH - 1, HEIGHT - 1], (6, 2))
    flat = np.c_[(seen - CENTRE) / UNIT, np.ones(6)]
    camera = np.array([[UNIT, 0, CENTRE[0]], [0, UNIT, CENTRE[1]], [0, 0, 1]])
    ideal, _ = cv2.projectPoints(flat, np.zeros(3), np.zeros(3), camera, np.array([k1, 0, 0, 0], float))
    return {"k1": k1, "seen": seen.tolist(), "ideal": ideal[:, 0].tolist()}


print(
    json.dumps(
        {
            "width": WIDTH,
            "height": HEIGHT,
            "poses": [pose(size) for size in ([63, 88], [59, 86], [63, 88], [57, 89])],
            "bows": [straightened(k1) for k1 in (-0.03, 0.02)],
        },
        indent=1,
    )
)
