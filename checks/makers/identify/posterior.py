"""Which printing is it, by enumeration.

Python 3.12 with its standard library alone. Every way in which the readings could have come about is
gone through one by one: the level of care, whether a group of readings is astray and to which
printing, whether each reading is right, what was perceived, and how it was written. No formula of
the program is used; the constants are those of docs/methods/identify.md. Run as
`python3 checks/makers/identify/posterior.py > checks/fixtures/identify/posterior.json`.
"""

import functools
import itertools
import json
import math

TYPO, LETTERS, ALIKE, NEW, STRANGE = 0.02, 30, 8, 0.3, 0.3
# Where some printing has none or two in three have no row, and elsewhere.
OVERLOOKED, LACKING = (2, 0.2), (0.5, 0.1)
UNLISTED, SHARE, LEVEL_SD, CARELESS = 0.02, 0.03, 0.9, 4
STEPS = [-2, -1.5, -1, -0.5, 0, 0.5, 1, 1.5, 2]
MISREAD = {"eye": 0.08, "scales": 0.05, "listing": 0.12}
SLIP = {"listing": 0.1}
OWN_SLIP = 0.01

WORLD = {
    "printings": ["ash", "elm", "oak"],
    "counterfeits": [{"id": "odd", "printings": ["oak"], "kind": "counterfeit"}],
    "about": {"ash": 50, "elm": 20, "oak": 5},
    # trait: look, values by id; a pair is a number with its tolerance, in grams.
    "traits": {
        "stamp": ["eye", {"ash": "red", "elm": "rust", "oak": None}],
        "back line": ["eye", {"ash": "none", "oak": "river"}],
        "weight": ["scales", {"ash": [1.80, 0.05], "elm": [1.72, 0.06], "odd": [1.60, 0.10]}],
    },
}
CASES = [
    {"name": "nothing seen", "readings": []},
    {"name": "one word", "readings": [["stamp", "red", "eye"]]},
    {"name": "a word with a slip of the pen", "readings": [["stamp", "rusr", "eye"]]},
    {"name": "a word that nobody listed", "readings": [["stamp", "violet", "eye"]]},
    {"name": "known to be absent", "readings": [["back line", "none", "eye"]]},
    {"name": "a number", "readings": [["weight", 1.74, "scales"]]},
    {
        "name": "all together, the seller against the owner",
        "readings": [
            ["stamp", "red", "eye"],
            ["back line", "river", "eye"],
            ["weight", 1.63, "scales"],
            ["stamp", "rust", "listing"],
            ["back line", "none", "listing"],
        ],
    },
]

HYPOTHESES = [(p, "printing", p) for p in WORLD["printings"]]
HYPOTHESES += [(c["id"], c["kind"], p) for c in WORLD["counterfeits"] for p in c["printings"]]
HYPOTHESES += [("", "unlisted", "")]


def value_of(trait, h):
    identity, _, printing = HYPOTHESES[h]
    told = WORLD["traits"][trait][1]
    return told.get(identity) or told.get(printing)


@functools.cache
def edits(a, b):
    """Optimal string alignment by recursion over all alignments."""
    if not a or not b:
        return len(a) + len(b)
    best = min(edits(a[1:], b) + 1, edits(a, b[1:]) + 1, edits(a[1:], b[1:]) + (a[0] != b[0]))
    if len(a) > 1 and len(b) > 1 and a[0] == b[1] and a[1] == b[0]:
        best = min(best, edits(a[2:], b[2:]) + 1)
    return best


def alike(a, b):
    return 1 - edits(a, b) / max(len(a), len(b))


def states_of(trait):
    words = []
    for h in range(len(HYPOTHESES)):
        v = value_of(trait, h)
        if isinstance(v, str) and v != "none" and v not in words:
            words.append(v)
    numbers = any(isinstance(value_of(trait, h), list) for h in range(len(HYPOTHESES)))
    return words, numbers


def seldom(trait):
    """1 where it would be odd for a printing to have none of it."""
    known = [value_of(trait, h) for h, (_, kind, _) in enumerate(HYPOTHESES) if kind == "printing"]
    told = [v for v in known if v is not None]
    return 0 if "none" in told or 3 * len(told) < len(known) else 1


def perceived_wrongly(trait, truth):
    """What a misread state is taken for, as a table of chances."""
    words, numbers = states_of(trait)
    weights = {w: 1 + ALIKE * (alike(truth, w) ** 2 if truth in words else 0) for w in words if w != truth}
    if truth not in words:
        # A state that is no word is compared as an empty text.
        weights = {w: 1.0 + ALIKE * (1 - max(len(w), 0) / len(w)) ** 2 for w in words}
    if truth != "<none>":
        weights["<none>"] = OVERLOOKED[seldom(trait)]
    if numbers:
        weights["<number>"] = 6 if truth == "<number>" else 1
    if truth != "<other>":
        weights["<other>"] = NEW
    total = sum(weights.values())
    return {k: w / total for k, w in weights.items()}


def truths(trait, h):
    """What the trait may be on a hypothesis, as (state, value, chance)."""
    v = value_of(trait, h)
    if v is not None:
        state = "<none>" if v == "none" else "<number>" if isinstance(v, list) else v
        return [(state, v, 1.0)]
    counts = {}
    for k, (_, kind, _) in enumerate(HYPOTHESES):
        known = value_of(trait, k)
        if kind == "printing" and known is not None:
            state = "<none>" if known == "none" else "<number>" if isinstance(known, list) else known
            counts[state] = counts.get(state, 0) + 1
    for word in states_of(trait)[0]:
        counts[word] = counts.get(word, 0) + 1
    counts["<none>"] = counts.get("<none>", 0) + LACKING[seldom(trait)]
    counts["<other>"] = counts.get("<other>", 0) + NEW
    total = sum(counts.values())
    chances = {s: c / total for s, c in counts.items()}
    if HYPOTHESES[h][1] == "unlisted":
        chances = {s: c * (1 - STRANGE) for s, c in chances.items()}
        chances["<other>"] += STRANGE
    return [(s, "guess", c) for s, c in chances.items()]


def written(state, text):
    """The chance of writing this text for a state that was perceived."""
    if text == "none":
        return 1.0 if state == "<none>" else 0.0
    if state == "<other>":
        return 0.02 * math.exp(-len(text))
    if state.startswith("<"):
        return 0.0
    d = edits(text, state)
    return (TYPO / LETTERS) ** d * (1 - TYPO) ** max(0, len(state) - d)


def t3(x, centre, scale):
    t = (x - centre) / scale
    return math.gamma(2) / (math.sqrt(3 * math.pi) * math.gamma(1.5)) * (1 + t * t / 3) ** -2 / scale


def normal(x, centre, sd):
    return math.exp(-((x - centre) ** 2) / (2 * sd * sd)) / (sd * math.sqrt(2 * math.pi))


def bearers(trait):
    return [v for h in range(len(HYPOTHESES)) if isinstance(v := value_of(trait, h), list)]


def spread(trait):
    all_of = bearers(trait)
    centre = sum(v for v, _ in all_of) / len(all_of)
    sd = math.sqrt(sum((v - centre) ** 2 for v, _ in all_of) / len(all_of))
    own = sum(t / 1.959964 for _, t in all_of) / len(all_of)
    return max(sd, 3 * own, 0.01 * centre)


def any_number(trait, x):
    all_of = bearers(trait)
    return t3(x, sum(v for v, _ in all_of) / len(all_of), spread(trait))


def careful(trait, value, x):
    """Read to 0.01: the tolerance of the trait and the rounding of the reading."""
    sd = math.hypot(value[1] / 1.959964, 0.005 / math.sqrt(3))
    return normal(x, value[0], sd), 0.5 * t3(x, value[0], CARELESS * sd) + 0.5 * any_number(trait, x)


def number_read(trait, value, x, right):
    if value != "guess":
        return careful(trait, value, x)[0 if right else 1]
    each = [careful(trait, v, x) for v in bearers(trait)]
    if right:
        same = sum(a for a, _ in each) / len(each)
        values = bearers(trait)
        wide = spread(trait) * len(values) ** -0.2
        near = sum(normal(x, v, math.sqrt((t / 1.959964) ** 2 + 0.005**2 / 3 + wide**2)) for v, t in values)
        return 0.2 * same + 0.6 * near / len(values) + 0.2 * any_number(trait, x)
    return sum(b for _, b in each) / len(each)


def chance(reading, h, error):
    """One reading on one hypothesis: over what it truly is, right or wrong, and what was perceived."""
    trait, said, _ = reading
    total = 0.0
    for state, value, p in truths(trait, h):
        if isinstance(said, str):
            total += p * (1 - error) * written(state, said)
            for seen, q in perceived_wrongly(trait, state).items():
                total += p * error * q * written(seen, said)
        else:
            if state == "<number>":
                total += p * (1 - error) * number_read(trait, value, said, True)
            q = perceived_wrongly(trait, state)["<number>"]
            density = number_read(trait, value, said, False) if state == "<number>" else any_number(trait, said)
            total += p * error * q * density
    return total


def prior():
    about = WORLD["about"]
    weights = []
    for identity, kind, printing in HYPOTHESES:
        weights.append(about[identity] if kind == "printing" else SHARE * about[printing] if printing else 0)
    total = sum(weights)
    return [UNLISTED if kind == "unlisted" else (1 - UNLISTED) * w / total for w, (_, kind, _) in zip(weights, HYPOTHESES)]


def posterior(readings):
    before = prior()
    raw = [math.exp(-x * x / 2) for x in STEPS]
    answer = [0.0] * len(HYPOTHESES)
    groups = {}
    for r in readings:
        groups.setdefault("listing" if r[2] == "listing" else r[0], []).append(r)
    n = len(HYPOTHESES)
    for step, weight in zip(STEPS, raw):
        errors = {k: 1 / (1 + (1 - e) / e * math.exp(-LEVEL_SD * step)) for k, e in MISREAD.items()}
        for h in range(n):
            # Every combination of which printing each group is really of; its own one most often.
            for about in itertools.product(range(-1, n), repeat=len(groups)):
                p = weight * before[h]
                for (key, group), other in zip(groups.items(), about):
                    slip = SLIP.get(key, OWN_SLIP)
                    p *= 1 - slip if other < 0 else slip * before[other]
                    of = h if other < 0 else other
                    for r in group:
                        p *= chance(r, of, errors[r[2]])
                answer[h] += p
    total = sum(answer)
    return {identity or "unlisted": p / total for (identity, _, _), p in zip(HYPOTHESES, answer)}


def entropy(p):
    return -sum(x * math.log2(x) for x in p.values() if x > 0)


def perceived(trait, h, seen, error):
    return sum(
        c * ((1 - error) * (state == seen) + error * perceived_wrongly(trait, state).get(seen, 0))
        for state, _, c in truths(trait, h)
    )


def gain(readings, trait):
    """Expected fall of entropy by a look at a trait of words, over all that may be seen and all that it may be."""
    words, _ = states_of(trait)
    before = prior()
    raw = [math.exp(-x * x / 2) for x in STEPS]
    look = WORLD["traits"][trait][0]
    joint = []
    for step, weight in zip(STEPS, raw):
        errors = {k: 1 / (1 + (1 - e) / e * math.exp(-LEVEL_SD * step)) for k, e in MISREAD.items()}
        for h in range(len(HYPOTHESES)):
            p = weight * before[h]
            for r in readings:
                astray = sum(before[k] * chance(r, k, errors[r[2]]) for k in range(len(HYPOTHESES)))
                p *= (1 - OWN_SLIP) * chance(r, h, errors[r[2]]) + OWN_SLIP * astray
            joint.append((h, errors[look], p))
    total = sum(p for _, _, p in joint)
    now = {}
    for h, _, p in joint:
        now[h] = now.get(h, 0) + p / total
    after = 0.0
    for seen in [*words, "<none>", "<other>"]:
        then = {}
        for h, error, p in joint:
            here = perceived(trait, h, seen, error)
            astray = sum(before[k] * perceived(trait, k, seen, error) for k in range(len(HYPOTHESES)))
            q = (1 - OWN_SLIP) * here + OWN_SLIP * astray
            then[h] = then.get(h, 0) + p / total * q
        chance_of_it = sum(then.values())
        after += chance_of_it * entropy({h: p / chance_of_it for h, p in then.items()})
    return entropy(now) - after


out = {"world": WORLD, "cases": []}
for case in CASES:
    case["p"] = posterior(case["readings"])
    out["cases"].append(case)
out["gains"] = [
    {"readings": [], "trait": "stamp", "bits": gain([], "stamp")},
    {"readings": [], "trait": "back line", "bits": gain([], "back line")},
    {"readings": [["stamp", "red", "eye"]], "trait": "back line", "bits": gain([["stamp", "red", "eye"]], "back line")},
]
print(json.dumps(out, indent=1))
