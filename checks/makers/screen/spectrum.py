"""Cross-spectra of a made picture, by numpy: the expected side of checks/print/spectrum.test.ts.

  python3 checks/makers/screen/spectrum.py > checks/fixtures/bench/screen_spectrum.json

The picture is 700 x 600 samples by a formula, so that nothing but the formula is shared.
"""
import json

import numpy as np

W, H, TILE = 700, 600, 256
y, x = np.mgrid[0:H, 0:W]
picture = np.stack(
    [(x * 7 + y * 13 + x * y) % 251 + 3, (x * x + 3 * y) % 240 + 9, (5 * x + y * y // 7) % 200 + 50], -1
)
value = picture / 255
light = np.where(value <= 0.04045, value / 12.92, ((value + 0.055) / 1.055) ** 2.4)
density = -np.log10((light + 0.004) / 1.004)

window = 0.5 - 0.5 * np.cos(2 * np.pi * (np.arange(TILE) + 0.5) / TILE)
spectra = []
for y0 in np.floor(np.linspace(0, H - TILE, 2)).astype(int):
    for x0 in np.floor(np.linspace(0, W - TILE, 3)).astype(int):
        tile = density[y0 : y0 + TILE, x0 : x0 + TILE]
        tile = (tile - tile.mean((0, 1))) * window[:, None, None] * window[None, :, None]
        spectra.append(np.fft.fft2(tile, axes=(0, 1)))
F = np.array(spectra)

bins = [(30, 5), (12, 250), (0, 40), (41, 41), (226, 20), (17, 33), (60, 0), (200, 230)]
pairs = [(0, 0), (1, 1), (2, 2), (0, 1), (0, 2), (1, 2)]
rows = [
    {"v": v, "u": u, "values": [float(np.mean((F[:, v, u, a] * np.conj(F[:, v, u, b])).real)) for a, b in pairs]}
    for v, u in bins
]
print(json.dumps({"made_with": f"numpy {np.__version__}", "rows": rows}, indent=1))
