#!/usr/bin/env python3
"""Witness of relief under one low lamp: exact light of a Gaussian hollow and of a Gaussian ridge.

Lambert's cosine of the exact normal to a lamp at infinity, over that of the flat card, on a grid; and the
largest value by the linear relation of Pentland (1990), 1 - (p cos a + q sin a) / tan e. x to the right,
y up as azimuths are counted, rows from the top. Run with numpy 2.4.6:

  python3 checks/makers/bench/one_lamp.py > checks/fixtures/bench/one_lamp.json
"""
import json

import numpy as np

AZIMUTH, ELEVATION = np.radians(130), np.radians(16)
LAMP = np.array([
    np.cos(AZIMUTH) * np.cos(ELEVATION), np.sin(AZIMUTH) * np.cos(ELEVATION), np.sin(ELEVATION)
])
STEP = 0.1
HALF_WIDTH = 2 * np.sqrt(2 * np.log(2))


def ratio(p, q):
    """Light over that of the flat card, for the rises p to the right and q upwards."""
    cosine = (LAMP[2] - p * LAMP[0] - q * LAMP[1]) / np.sqrt(1 + p * p + q * q)
    return np.maximum(cosine, 0) / LAMP[2]


def linear(p, q):
    return 1 - (p * np.cos(AZIMUTH) + q * np.sin(AZIMUTH)) / np.tan(ELEVATION)


def hollow(depth, width, reach=2.5):
    s = width / HALF_WIDTH
    at = np.arange(-reach, reach + STEP / 2, STEP)
    x, y = np.meshgrid(at, at[::-1])
    bowl = depth * np.exp(-(x * x + y * y) / (2 * s * s))
    p, q = bowl * x / s**2, bowl * y / s**2
    return ratio(p, q), linear(p, q)


def ridge(height, width, across, reach=2.5):
    """A section along `across` (radians), the direction in which the ridge falls on both sides."""
    s = width / HALF_WIDTH
    d = np.arange(-reach, reach + STEP / 2, STEP)
    slope = -height * d / s**2 * np.exp(-d * d / (2 * s * s))
    return ratio(slope * np.cos(across), slope * np.sin(across))


bowl, straight = hollow(0.04, 1.4)
print(json.dumps({
    "azimuth_deg": 130, "step_mm": STEP,
    "hollow": {"depth_mm": 0.04, "width_mm": 1.4, "light": np.round(bowl, 4).tolist(),
               "linear_most": round(float(straight.max()), 4)},
    "ridge": {"height_mm": 0.03, "width_mm": 0.8, "across_deg": 100,
              "light": np.round(ridge(0.03, 0.8, np.radians(100)), 4).tolist()},
}))
