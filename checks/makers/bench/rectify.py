"""Makes checks/fixtures/bench/rectify.json: what OpenCV sees of a card in a made picture.

Usage: python3 checks/makers/bench/rectify.py   (python3-opencv, numpy)

Places: perspectiveTransform, then undistortPoints, whose forward model (seen to ideal) is the
radial term of the bench turned round. Values: getRectSubPix on float light, bilinear without the
fixed-point weights of remap; resize with INTER_AREA where the view is coarser than the picture.
"""
import json
import pathlib

import cv2
import numpy as np

WIDTH, HEIGHT = 61, 83


def picture():
    """Eight-bit colours from whole numbers alone, so that the test draws the same ones."""
    y, x = np.mgrid[0:HEIGHT, 0:WIDTH]
    return np.stack([(x * 7 + y * 3) % 256, (x * x + y * 11) % 256, (x * y + 40) % 256], axis=-1)


def light(samples):
    value = samples / 255
    return np.where(value <= 0.04045, value / 12.92, ((value + 0.055) / 1.055) ** 2.4)


def places(case):
    width_mm, height_mm = case['sizeMm']
    cx, cy = (WIDTH - 1) / 2, (HEIGHT - 1) / 2
    unit = np.hypot(WIDTH, HEIGHT) / 2
    camera = np.array([[unit, 0, cx], [0, unit, cy], [0, 0, 1]])
    k1 = case['k1']
    seen = (np.array(case['corners']) - [cx, cy]) / unit
    ideal = seen * (1 + k1 * (seen**2).sum(axis=1, keepdims=True)) * unit + [cx, cy]
    card = np.float32([[0, 0], [width_mm, 0], [width_mm, height_mm], [0, height_mm]])
    # getPerspectiveTransform takes floats only; findHomography of four points keeps doubles.
    h, _ = cv2.findHomography(np.float64(card), ideal, 0)
    columns, rows = case['columns'], case['rows']
    step = 1 / case['pxPerMm']
    grid = np.array([
        [case['fromMm'][0] + (i + 0.5) * step, case['fromMm'][1] + (j + 0.5) * step]
        for j in range(rows)
        for i in range(columns)
    ])
    straight = cv2.perspectiveTransform(grid[:, None], h)
    bow = np.array([k1, 0, 0, 0, 0], dtype=float)
    stop = (cv2.TERM_CRITERIA_COUNT + cv2.TERM_CRITERIA_EPS, 200, 1e-13)
    return cv2.undistortPointsIter(straight, camera, bow, None, camera, stop)[:, 0]


def seen(case):
    image = np.float32(light(picture()))
    at = places(case)
    channels = cv2.split(image)
    values = [[float(cv2.getRectSubPix(c, (1, 1), tuple(p))[0, 0]) for c in channels] for p in at]
    return {**case, 'at': np.round(at, 7).tolist(), 'light': np.round(values, 7).tolist()}


def shrunk():
    image = np.float32(light(picture()))[2:2 + 60, 1:1 + 45]
    small = cv2.resize(image, (15, 20), interpolation=cv2.INTER_AREA)
    return np.round(small.reshape(-1, 3), 7).tolist()


CASES = [
    {'name': 'tilted and bowed outwards', 'k1': -0.05, 'sizeMm': [6.3, 8.8],
     'corners': [[7.3, 9.1], [50.2, 6.4], [55.7, 74.9], [4.8, 70.2]],
     'fromMm': [0.2, 0.3], 'pxPerMm': 2, 'columns': 12, 'rows': 17},
    {'name': 'bowed inwards, a strip finer than the picture', 'k1': 0.08, 'sizeMm': [59, 86],
     'corners': [[5.5, 4.25], [56.1, 3.2], [57.4, 78.6], [3.9, 79.9]],
     'fromMm': [2, 40], 'pxPerMm': 1.6, 'columns': 24, 'rows': 3},
]

out = pathlib.Path(__file__).parents[2] / 'fixtures/bench/rectify.json'
found = {
    'opencv': cv2.__version__,
    'numpy': np.__version__,
    'width': WIDTH,
    'height': HEIGHT,
    'cases': [seen(case) for case in CASES],
    'shrunk': {'corners': [[0.5, 1.5], [45.5, 1.5], [45.5, 61.5], [0.5, 61.5]],
               'sizeMm': [15, 20], 'pxPerMm': 1, 'light': shrunk()},
}
out.write_text(json.dumps(found, separators=(',', ':')) + '\n')
