#!/usr/bin/env python3
"""Witness of the grade's distribution: its formulas once more, in numpy, by other ways.

Shares: the Dirichlet-multinomial likelihood as a product of rising factorials, one copy at a time
(Polya's urn), concentration on the same grid. Tilt: a finer grid and the trapezoid rule. Grade: caps
of 18 measures drawn from the prior and weighted by the evidence (importance sampling, one million
draws, seed 1), where the program multiplies survivals.

  python3 checks/makers/bench/grade.py > checks/fixtures/bench/grade.json
"""
import json
import math
import sys

import numpy as np


def urn(row, mean, c):
    """log P of one particular order of a row's copies."""
    log, seen, total = 0.0, np.zeros(len(row)), 0
    for g, n in enumerate(row):
        for _ in range(n):
            log += np.log((seen[g] + c * mean[g]) / (total + c))
            seen[g] += 1
            total += 1
    return log


def shares(own, rows):
    mean = np.array(rows).sum(0) + 0.5
    mean = mean / mean.sum()
    grid = 10 ** (np.arange(31) / 10)
    log = np.array([sum(urn(r, mean, c) for r in rows) for c in grid])
    w = np.exp(log - log.max())
    w /= w.sum()
    return [float(sum(w[i] * (n + c * mean[g]) / (sum(own) + c) for i, c in enumerate(grid))) for g, n in enumerate(own)]


def tilt(base, outcomes):
    x = np.linspace(-2, 2, 4001)
    p = np.array(base)[None, :] * np.exp(x[:, None] * np.arange(len(base))[None, :])
    p /= p.sum(1, keepdims=True)
    log = -0.5 * ((x + 0.25) / 0.35) ** 2 + sum(np.log(p[:, g]) for g in outcomes) if outcomes else -0.5 * ((x + 0.25) / 0.35) ** 2
    w = np.exp(log - log.max())
    w /= w.sum()
    return {"shares": [float(v) for v in (w[:, None] * p).sum(0)], "tilt": float((w * x).sum())}


def grade(base, holds, likelihood, n=1_000_000):
    """holds: share of each of 18 measures; likelihood: {index: [value for each cap]}."""
    rng = np.random.default_rng(1)
    survival = np.cumsum(base[::-1])[::-1]
    least = np.full(n, len(base) - 1)
    weight = np.ones(n)
    for i, share in enumerate(holds):
        s = survival ** share
        mass = s - np.append(s[1:], 0)
        cap = rng.choice(len(base), size=n, p=mass / mass.sum())
        if i in likelihood:
            weight *= np.array(likelihood[i])[cap]
        least = np.minimum(least, cap)
    total = weight.sum()
    p = [float(weight[least == g].sum() / total) for g in range(len(base))]
    se = float(np.sqrt((weight ** 2).sum()) / total)
    return {"p": p, "se": se}


rows = [[1, 2, 8, 14, 3], [0, 0, 3, 11, 9], [2, 5, 9, 4, 0]]
base = [0.05, 0.12, 0.28, 0.4, 0.15]
holds = [v * f for f in (0.75, 0.25) for v in (0.2, 0.2, 0.17, 0.15, 0.09, 0.06, 0.05, 0.04, 0.04)]
# Front: centering 58 +- 1.5 %, a corner of 0.3 +- 0.1 mm2 that is there with probability 0.8, and no
# scratch seen in a picture that would show six of ten. Limits from the second grade up to the best.
limits = {0: [75, 65, 60, 55], 1: [2, 0.8, 0.4, 0.1], 3: [40, 20, 8, 2]}
amounts = {0: ([(1, 58, 1.5)], 1), 1: ([(0.2, 0, 0), (0.8, 0.3, 0.1)], 1), 3: ([(1, 0, 0)], 0.6)}


def below(x, mean, sd):
    return 0.5 * (1 + math.erf((x - mean) / sd / math.sqrt(2))) if sd else float(mean <= x)


def likelihood(i):
    parts, shown = amounts[i]
    ok = [1.0]
    for t in limits[i]:
        p = sum(w * below(t, m, math.hypot(sd, 0.2 * t) if m > 0 else sd) for w, m, sd in parts)
        ok.append(min(ok[-1], p))
    return [shown * (p - q) + (1 - shown) * p for p, q in zip(ok, ok[1:] + [0])]


marks = {i: likelihood(i) for i in amounts}
json.dump(
    {
        "rows": rows,
        "shares": [shares(r, rows) for r in rows],
        "base": base,
        "tilts": [{"outcomes": o, **tilt(base, o)} for o in ([], [2, 2, 3], [4, 4, 4, 3, 4])],
        "grade": {**grade(np.array(base), holds, marks)},
    },
    sys.stdout,
    indent=1,
)
