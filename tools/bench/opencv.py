"""The comparable basics by OpenCV in one thread: an outline by contours, the card laid flat, its
border by line profiles, light blobs. Finds less, and less well; it is here for its time alone.

    python3 tools/bench/opencv.py PICTURE …

Prints the milliseconds of processor time that each picture took once it was read; the first ten are passed over.
"""
import json
import sys
import time

import cv2
import numpy as np

WARM = 10
PX = 12


def outline(grey):
    edges = cv2.Canny(cv2.GaussianBlur(grey, (5, 5), 0), 40, 120)
    closed = cv2.morphologyEx(edges, cv2.MORPH_CLOSE, np.ones((7, 7), np.uint8))
    contours, _ = cv2.findContours(closed, cv2.RETR_EXTERNAL, cv2.CHAIN_APPROX_NONE)
    largest = max(contours, key=cv2.contourArea)
    corners = cv2.approxPolyDP(largest, 0.02 * cv2.arcLength(largest, True), True)
    if len(corners) != 4:
        corners = cv2.boxPoints(cv2.minAreaRect(largest))
    points = np.array(corners, np.float32).reshape(4, 2)
    sides = [robust_line(largest.reshape(-1, 2), points[k], points[(k + 1) % 4]) for k in range(4)]
    return points, sides


def robust_line(points, a, b):
    along = (b - a) / np.linalg.norm(b - a)
    off = np.abs((points - a) @ np.array([-along[1], along[0]]))
    near = points[off < 6].astype(np.float32)
    return cv2.fitLine(near, cv2.DIST_HUBER, 0, 0.01, 0.01) if len(near) > 8 else None


def measured(picture):
    grey = cv2.cvtColor(picture, cv2.COLOR_BGR2GRAY)
    points, _ = outline(grey)
    order = points[np.argsort(np.arctan2(*(points - points.mean(0)).T[::-1]))]
    flat = np.array([[0, 0], [63, 0], [63, 88], [0, 88]], np.float32) * PX
    card = cv2.warpPerspective(picture, cv2.getPerspectiveTransform(order, flat), (63 * PX, 88 * PX))
    lab = cv2.cvtColor(card, cv2.COLOR_BGR2LAB)
    steps = [np.abs(cv2.Sobel(lab, cv2.CV_32F, *way, ksize=3)).sum(2) for way in ((1, 0), (0, 1))]
    borders = [np.median(steps[0][:, : 9 * PX].argmax(1)), np.median(steps[1][: 9 * PX].argmax(0))]
    blurred = cv2.medianBlur(lab[:, :, 0], 15)
    light = cv2.subtract(lab[:, :, 0], blurred)
    _, mask = cv2.threshold(light, 0, 255, cv2.THRESH_BINARY + cv2.THRESH_OTSU)
    blobs = cv2.connectedComponentsWithStats(cv2.morphologyEx(mask, cv2.MORPH_OPEN, np.ones((3, 3), np.uint8)))
    return borders, blobs[0]


cv2.setNumThreads(1)
pictures = [cv2.imread(name) for name in sys.argv[1:]]
for k in range(WARM):
    measured(pictures[k % len(pictures)])
took = []
for picture in pictures:
    began = time.process_time()
    measured(picture)
    took.append(1000 * (time.process_time() - began))
print(json.dumps(took))
