"""Least-squares optima of rate models for the rearings of rearings.csv, by SciPy from many starts.

Run: /usr/bin/python3 fitted-optima.py (in this folder). Prints model, sum of squares, parameters.
Logan's and Lactin's models are searched in delta = 1/D - rho, in which they are well conditioned.
"""

import csv

import numpy as np
from scipy.optimize import least_squares

R = 1.987


def briere2(t, a, t0, tl, m):
    inside = (t > t0) & (t < tl)
    return np.where(inside, a * t * (t - t0) * np.maximum(tl - t, 1e-300) ** (1 / m), 0)


def logan6(t, b, rho, tm, delta):
    return -b / delta * np.exp(rho * t) * np.expm1(-delta * (tm - t))


def schoolfield(t, rho, ha, hh, th):
    k = t + 273.15
    ref = 298.15
    return (
        rho * k / ref * np.exp(ha / R * (1 / ref - 1 / k)) / (1 + np.exp(hh / R * (1 / th - 1 / k)))
    )


def hilbert(t, psi, d, tm, width, tb=9.96):
    x = t - tb
    return psi * (x * x / (x * x + d * d) - np.exp(-(tm - t) / width))


def stinner(t, k1, k2, top, c=0.12):
    return c / (1 + np.exp(k1 + k2 * np.where(t <= top, t, 2 * top - t)))


def beta(t, mu, alpha, b, tc, tb=9.96):
    inside = (t > tb) & (t < tc)
    return np.where(
        inside,
        np.exp(mu + alpha * np.log(np.maximum(t - tb, 1e-300)) + b * np.log(np.maximum(tc - t, 1e-300))),
        0,
    )


MODELS = {
    "BRIERE_1": (lambda t, a, t0, tl: briere2(t, a, t0, tl, 2.0), [(5e-5, 2e-4), (5, 11.9), (32.1, 40)]),
    "BRIERE_2": (briere2, [(5e-5, 3e-4), (3, 11.9), (32.1, 40), (1, 8)]),
    "LOGAN_6": (logan6, [(1e-5, 1e-4), (0.1, 0.3), (32.1, 36), (1e-5, 0.1)]),
    "LACTIN_1": (lambda t, rho, tm, d: logan6(t, d, rho, tm, d), [(0.1, 0.3), (32.1, 36), (1e-5, 1e-4)]),
    "LACTIN_2": (
        lambda t, rho, tm, d, lam: logan6(t, d, rho, tm, d) + lam,
        [(0.1, 0.3), (32.1, 36), (1e-5, 1e-4), (-0.02, 0)],
    ),
    "LOGAN_10": (
        lambda t, al, k, rho, tm, d: al * (1 / (1 + np.exp(k - rho * t)) - np.exp(-(tm - t) / d)),
        [(0.08, 0.3), (3, 7), (0.1, 0.4), (32.1, 36), (0.5, 4)],
    ),
    "SCHOOLFIELD_4": (schoolfield, [(0.05, 0.12), (1e4, 3e4), (5e4, 2e5), (300, 307)]),
    "TAYLOR": (lambda t, rm, tm, ts: rm * np.exp(-0.5 * ((t - tm) / ts) ** 2), [(0.06, 0.1), (25, 31), (4, 12)]),
    "STINNER": (stinner, [(3, 8), (-0.4, -0.1), (26, 31)]),
    "HILBERT_LOGAN": (hilbert, [(0.1, 0.3), (8, 25), (32.1, 36), (0.5, 3)]),
    "BETA": (beta, [(-9, -5), (0.8, 2.5), (0.1, 1), (32.1, 36)]),
}


def rates(name):
    with open("rearings.csv", encoding="utf-8") as file:
        lines = [line for line in file if not line.startswith("#")]
    rows = [row for row in csv.DictReader(lines) if row["set"] == name]
    return (
        np.array([float(row["celsius"]) for row in rows]),
        np.array([0.0 if row["days"] == "none" else 1 / float(row["days"]) for row in rows]),
    )


def best(name, model, starts=300):
    f, box = MODELS[model]
    t, y = rates(name)
    rng = np.random.default_rng(1)
    found = None
    for _ in range(starts):
        p = np.array([low + rng.random() * (high - low) for low, high in box])
        try:
            end = least_squares(
                lambda q: f(t, *q) - y, p, x_scale="jac", method="lm", ftol=1e-15, xtol=1e-15,
                gtol=1e-15, max_nfev=4000,
            )
        except (ValueError, FloatingPointError):
            continue
        if found is None or 2 * end.cost < found[0]:
            found = (2 * end.cost, end.x)
    return found


if __name__ == "__main__":
    np.seterr(all="ignore")
    for data in ("oligota", "oligota-zero"):
        for name in MODELS:
            sse, parameters = best(data, name)
            print(data, name, f"{sse:.10e}", *(f"{value:.9g}" for value in parameters))
            curve = MODELS[name][0](np.array([15.0, 20, 25, 28, 30, 32]), *parameters)
            print("  rates at 15, 20, 25, 28, 30, 32:", *(f"{rate:.7f}" for rate in curve))
