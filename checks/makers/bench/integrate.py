#!/usr/bin/env python3
"""Witness of the integration of slopes: the weighted least squares once more, as one sparse system.

Slopes of a made surface with noise and uneven weights on a grid of 16 by 8 nodes, seed 6; heights by
scipy's sparse direct solver (normal equations, one node held, mean taken off). Then the scatter of
heights that white noise of the slopes leaves: 400 draws on 64 by 128 nodes, by numpy's own FFT of the
mirrored field. Run with numpy 2.4.6, scipy 1.17.1:

  python3 checks/makers/bench/integrate.py > checks/fixtures/bench/integrate.json
"""
import json

import numpy as np
from scipy.sparse import csr_matrix, diags
from scipy.sparse.linalg import spsolve

W, H = 16, 8
chance = np.random.default_rng(6)


def weighted():
    x, y = np.meshgrid(np.arange(W), np.arange(H))
    bowl = -2 * np.exp(-((x - 6) ** 2 + (y - 4) ** 2) / 6)
    right = -bowl * (x - 6) / 3 + 0.02 * chance.standard_normal((H, W))
    down = -bowl * (y - 4) / 3 + 0.02 * chance.standard_normal((H, W))
    weight = chance.uniform(0.05, 1, (H, W))
    rows, values, weights = [], [], []
    for j in range(H):
        for i in range(W):
            for dj, di, slope in ((0, 1, right), (1, 0, down)):
                if i + di < W and j + dj < H:
                    rows.append((j * W + i, (j + dj) * W + i + di))
                    values.append((slope[j, i] + slope[j + dj, i + di]) / 2)
                    weights.append(min(weight[j, i], weight[j + dj, i + di]))
    n = len(rows)
    at = np.repeat(np.arange(n), 2)
    matrix = csr_matrix((np.tile([-1.0, 1.0], n), (at, np.array(rows).ravel())), (n, W * H))
    normal = (matrix.T @ diags(weights) @ matrix).tolil()
    normal[0, :] = 0
    normal[0, 0] = 1
    pull = matrix.T @ (np.array(weights) * np.array(values))
    pull[0] = 0
    heights = spsolve(normal.tocsr(), pull)
    return {
        "width": W, "height": H, "right": right.ravel().tolist(), "down": down.ravel().tolist(),
        "weight": weight.ravel().tolist(), "heights": (heights - heights.mean()).tolist(),
    }


def scatter(width=64, height=128, draws=400):
    """Root mean square of heights by noise of one in each slope, inside a rim of a quarter."""
    total = 0.0
    for _ in range(draws):
        right, down = chance.standard_normal((2, height, width))
        dx = (right[:, 1:] + right[:, :-1]) / 2
        dy = (down[1:, :] + down[:-1, :]) / 2
        div = np.zeros((height, width))
        div[:, :-1] += dx
        div[:, 1:] -= dx
        div[:-1, :] += dy
        div[1:, :] -= dy
        even = np.block([[div, div[:, ::-1]], [div[::-1], div[::-1, ::-1]]])
        u = 2 * np.cos(np.pi * np.arange(2 * width) / width) - 2
        v = 2 * np.cos(np.pi * np.arange(2 * height) / height) - 2
        gain = u[None, :] + v[:, None]
        gain[0, 0] = 1
        spectrum = np.fft.fft2(even) / gain
        spectrum[0, 0] = 0
        z = np.fft.ifft2(spectrum).real[:height, :width]
        inner = z[height // 4 : -height // 4, width // 4 : -width // 4]
        total += (inner**2).mean()
    return {"width": width, "height": height, "rms": float(np.sqrt(total / draws))}


print(json.dumps({"weighted": weighted(), "noise": scatter()}))
