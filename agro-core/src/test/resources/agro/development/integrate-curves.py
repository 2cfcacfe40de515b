"""Degree-days of single days by numerical integration of the temperature curve, with SciPy.

/usr/bin/python3 integrate-curves.py       (writes the CSV files beside it, and checks the curves of
                                            choices-that-matter.csv)

Nothing here uses a closed form: the development rate at a moment, as the cutoff defines it, is
integrated over the curve with scipy.integrate.quad (relative tolerance 1e-12), in pieces between the
moments at which the curve crosses a threshold, which scipy.optimize.brentq finds.
"""

import csv
import math
import platform
import random

import scipy
from scipy.integrate import quad
from scipy.optimize import brentq

CUTOFFS = ("none", "horizontal", "intermediate", "vertical")
VERSION = f"Python {platform.python_version()}, SciPy {scipy.__version__}"


def sine(low, high, share):
    return (low + high) / 2 - (high - low) / 2 * math.cos(math.pi * share)


def triangle(low, high, share):
    return low + (high - low) * share


def halves(shape, tn, tx, tn2):
    return [
        (0, 12, lambda t: shape(tn, tx, t / 12)),
        (12, 24, lambda t: shape(tn2, tx, (24 - t) / 12)),
    ]


def sine_and_decay(tn, tx, tn2, length):
    def by_day(t):
        return tn + (tx - tn) * math.sin(math.pi * t / (length + 4))

    sunset = by_day(length)
    night = 24 - length
    top = (length + 4) / 2
    return [
        (0, min(top, length), by_day),
        (min(top, length), length, by_day),
        (length, min(24, length + 1), lambda t: sunset),
        (min(24, length + 1), 24,
         lambda t: sunset - (sunset - tn2) / math.log(night) * math.log(t - length)),
    ]


def rate(temperature, lower, upper, cutoff):
    if temperature <= lower:
        return 0.0
    if temperature <= upper or cutoff == "none":
        return temperature - lower
    return {"horizontal": upper - lower,
            "intermediate": 2 * upper - lower - temperature,
            "vertical": 0.0}[cutoff]


def degree_days(pieces, lower, upper, cutoff):
    total = 0.0
    for begin, end, curve in pieces:
        if end <= begin:
            continue
        cuts = [begin, end]
        for level in (lower, upper):
            if (curve(begin) - level) * (curve(end) - level) < 0:
                cuts.append(brentq(lambda t: curve(t) - level, begin, end, xtol=1e-15, rtol=1e-15))
        cuts.sort()
        for a, b in zip(cuts, cuts[1:]):
            if b - a < 1e-14:
                continue
            middle = curve((a + b) / 2)
            # Between two crossings one branch of the rate holds: decide it in the middle.
            if middle <= lower:
                continue
            if middle <= upper or cutoff == "none":
                branch = lambda t: curve(t) - lower
            elif cutoff == "horizontal":
                branch = lambda t: upper - lower
            elif cutoff == "intermediate":
                branch = lambda t: 2 * upper - lower - curve(t)
            else:
                continue
            total += quad(branch, a, b, epsabs=1e-13, epsrel=1e-12, limit=200)[0]
    return total / 24


def floored(value, cutoff):
    return max(0.0, value) if cutoff == "intermediate" else value


def write(name, header, columns, rows):
    with open(name, "w", encoding="utf-8", newline="\n") as out:
        for line in header:
            out.write("# " + line + "\n")
        out.write(",".join(columns) + "\n")
        for row in rows:
            out.write(",".join(row) + "\n")


SINGLE = [
    ("A", "below the lower threshold", "CELSIUS", 2, 8, 10, 30),
    ("B", "above the upper threshold", "CELSIUS", 32, 38, 10, 30),
    ("C", "inside", "CELSIUS", 12, 28, 10, 30),
    ("D", "crosses the lower threshold", "CELSIUS", 5, 25, 10, 30),
    ("E", "crosses the upper threshold", "CELSIUS", 15, 35, 10, 30),
    ("F", "crosses both", "CELSIUS", 5, 35, 10, 30),
    ("G", "lower threshold at the mean", "CELSIUS", 0, 20, 10, 30),
    ("H", "upper threshold at the mean", "CELSIUS", 20, 40, 10, 30),
    ("J", "barely over the lower threshold", "CELSIUS", 4, 11, 10, 30),
    ("K", "inside", "CELSIUS", 12, 34, 8.0, 37.3),
    ("M", "crosses the lower threshold", "FAHRENHEIT", 40, 80, 50, 88),
    ("N", "crosses both", "FAHRENHEIT", 45, 95, 50, 88),
    ("O", "crosses the upper threshold", "FAHRENHEIT", 60, 100, 50, 86),
    ("Q1", "both extremes at the thresholds", "CELSIUS", 10, 30, 10, 30),
    ("Q2", "minimum at the lower threshold", "CELSIUS", 10, 20, 10, 30),
    ("Q3", "maximum at the upper threshold", "CELSIUS", 20, 30, 10, 30),
    ("Q4", "maximum at the lower threshold", "CELSIUS", 2, 10, 10, 30),
    ("Q5", "minimum at the upper threshold", "CELSIUS", 30, 38, 10, 30),
    ("Q6", "constant temperature", "CELSIUS", 20, 20, 10, 30),
    ("R1", "intermediate would be -5", "CELSIUS", 50, 60, 10, 30),
    ("R2", "intermediate falls below zero at noon", "CELSIUS", 30, 60, 10, 30),
]

DOUBLE = [
    ("Da", "CELSIUS", 5, 25, 12, 10, 30),
    ("Db", "CELSIUS", 5, 35, 18, 10, 30),
    ("Dd", "CELSIUS", 2, 8, -3, 10, 30),
    ("Df", "CELSIUS", 8, 22, 8, 10, 30),
    ("Dg", "FAHRENHEIT", 45, 95, 60, 50, 88),
    ("Dh", "CELSIUS", 10, 30, 12, 10, 30),
]

DECAY = [(length, lower, upper) for length in (12, 15)
         for lower, upper in ((10, 30), (12, 26), (15, 25))]


def values(pieces, lower, upper, decimals=6):
    return [f"{floored(degree_days(pieces, lower, upper, c), c):.{decimals}f}" for c in CUTOFFS]


def single_triangle():
    rows = [(i, case, unit, *(f"{v:g}" for v in (tn, tx, lt, ut)),
             *values(halves(triangle, tn, tx, tn), lt, ut))
            for i, case, unit, tn, tx, lt, ut in SINGLE]
    write("single-triangle-check.csv",
          ["Degree-days of one day by the single triangle, for every position of the day.",
           "Method: Lindsey & Newman 1956, Ecology 37:812-823 (value from memory).",
           f"Values: computed by integrate-curves.py, {VERSION}; not printed in that paper.",
           "Rows R: days on which the intermediate rule would go below zero, for the whole day",
           "  (R1, floored at 0) or only around noon (R2, not floored).",
           "Units: temperatures in the unit named, degree-days in that unit times day.",
           "Tolerance: 1e-6 absolute."],
          ("id", "case", "unit", "min", "max", "lower", "upper", *CUTOFFS), rows)


def double_curves():
    rows = []
    for shape, method in ((sine, "DOUBLE_SINE"), (triangle, "DOUBLE_TRIANGLE")):
        for i, unit, tn, tx, tn2, lt, ut in DOUBLE:
            rows.append((method, i, unit, *(f"{v:g}" for v in (tn, tx, tn2, lt, ut)),
                         *values(halves(shape, tn, tx, tn2), lt, ut)))
    write("double-curves-check.csv",
          ["Degree-days of one day by the double sine (Allen 1976, Environ. Entomol. 5:388-396) and the",
           "double triangle (Sevacherian, Stern & Mueller 1977, J. Econ. Entomol. 70:399-402), both from",
           f"memory. Values: computed by integrate-curves.py, {VERSION}; not printed in those papers.",
           "Units: temperatures in the unit named, degree-days in that unit times day.",
           "Tolerance: 1e-6 absolute."],
          ("method", "id", "unit", "min", "max", "next_min", "lower", "upper", *CUTOFFS), rows)


def decay():
    rows = []
    for length, lt, ut in DECAY:
        pieces = sine_and_decay(10, 30, 12, length)

        def at(hour):
            for begin, end, curve in pieces:
                if begin <= hour <= end:
                    return curve(hour)
            raise ValueError(hour)

        samples = sum(rate(at(h), lt, ut, "horizontal") for h in range(24)) / 24
        mean = sum(quad(c, a, b, epsabs=1e-13)[0] for a, b, c in pieces if b > a) / 24
        rows.append((f"{length}", f"{lt}", f"{ut}", f"{mean:.6f}",
                     *values(pieces, lt, ut), f"{samples:.6f}"))
    write("sine-and-decay-check.csv",
          ["Degree-days of a day with minimum 10, maximum 30 and next minimum 12 degC by the curve of",
           "Linvill 1990 (HortScience 25:14-16, formula from memory), first hour of the night flat.",
           f"Values: computed by integrate-curves.py, {VERSION}; not printed in that paper.",
           "Column samples: mean of the horizontally cut rate at t = 0, 1, ..., 23 h after sunrise.",
           "Units: hours, degC, degC.d. Tolerance: 1e-6 absolute."],
          ("day_length", "lower", "upper", "mean", *CUTOFFS, "samples"), rows)


def random_days(seed=19900114, count=400):
    chance = random.Random(seed)
    rows = []
    for _ in range(count):
        tn = chance.uniform(-10, 30)
        tx = tn + chance.uniform(0.5, 25)
        tn2 = min(tx, tn + chance.uniform(-10, 10))
        length = chance.uniform(5, 22)
        lt = chance.uniform(0, 15)
        ut = lt + chance.uniform(2, 25)
        tn, tx, tn2, length, lt, ut = (round(v, 3) for v in (tn, tx, tn2, length, lt, ut))
        for method, pieces in (
            ("SINGLE_TRIANGLE", halves(triangle, tn, tx, tn)),
            ("DOUBLE_TRIANGLE", halves(triangle, tn, tx, tn2)),
            ("SINGLE_SINE", halves(sine, tn, tx, tn)),
            ("DOUBLE_SINE", halves(sine, tn, tx, tn2)),
            ("SINE_AND_DECAY", sine_and_decay(tn, tx, tn2, length)),
        ):
            rows.append((method, *(f"{v:g}" for v in (tn, tx, tn2, length, lt, ut)),
                         *values(pieces, lt, ut, 12)))
    write("curves-random-days.csv",
          [f"Degree-days of {count} random days by five curves, by numerical integration.",
           f"Computed by integrate-curves.py, {VERSION}, seed {seed}.",
           "The intermediate cutoff is floored at zero for the day. Units: degC, h, degC.d.",
           "Tolerance: 1e-9 degC.d absolute."],
          ("method", "min", "max", "next_min", "day_length", "lower", "upper", *CUTOFFS), rows)


def check_choices():
    with open("choices-that-matter.csv", encoding="utf-8") as table:
        rows = csv.DictReader(line for line in table if not line.startswith("#"))
        for row in rows:
            tn, tx, tn2, length, lt, ut, printed = (
                float(row[c]) for c in ("min", "max", "next_min", "day_length", "lower", "upper",
                                        "degree_days"))
            pieces = {"SINGLE_SINE": halves(sine, tn, tx, tn),
                      "SINGLE_TRIANGLE": halves(triangle, tn, tx, tn),
                      "DOUBLE_SINE": halves(sine, tn, tx, tn2),
                      "SINE_AND_DECAY": sine_and_decay(tn, tx, tn2, length)}.get(row["method"])
            if pieces:
                value = degree_days(pieces, lt, ut, row["cutoff"].lower())
                assert abs(value - printed) < 6e-4, (row["id"], value, printed)


check_choices()
single_triangle()
double_curves()
decay()
random_days()
