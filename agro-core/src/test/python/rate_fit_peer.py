"""A Briere-1 fit and 1,000 residual bootstraps with SciPy's curve_fit, on the rates of a file.

Usage: /usr/bin/python3 rate_fit_peer.py RATES.csv [REPEATS]
Prints the parameters of the fit, then the seconds of the first call and the best of the others.
"""

import sys
import time

import numpy as np
from scipy.optimize import curve_fit


def briere(celsius, a, t0, tl):
    rate = a * celsius * (celsius - t0) * np.sqrt(np.maximum(tl - celsius, 0))
    return np.where((celsius > t0) & (celsius < tl), rate, 0)


def fit_and_bootstrap(celsius, rates, rng):
    best, _ = curve_fit(briere, celsius, rates, p0=[3e-5, 8, 38], maxfev=5000)
    fitted = briere(celsius, *best)
    residuals = rates - fitted
    for _ in range(1000):
        try:
            curve_fit(
                briere, celsius, fitted + rng.choice(residuals, 8), p0=best, maxfev=2000
            )
        except RuntimeError:
            pass
    return best


def main():
    celsius, rates = np.loadtxt(sys.argv[1], delimiter=",", skiprows=1, unpack=True)
    repeats = int(sys.argv[2]) if len(sys.argv) > 2 else 3
    rng = np.random.default_rng(1)
    seconds = []
    for _ in range(repeats):
        start = time.perf_counter()
        best = fit_and_bootstrap(celsius, rates, rng)
        seconds.append(time.perf_counter() - start)
    tight, _ = curve_fit(
        briere, celsius, rates, p0=best, xtol=1e-15, ftol=1e-15, gtol=1e-15, maxfev=9000
    )
    print("parameters", *(repr(float(value)) for value in tight))
    print("sum_of_squares", repr(float(((rates - briere(celsius, *tight)) ** 2).sum())))
    print(f"first {seconds[0]:.4f} s, best of the others {min(seconds[1:] or seconds):.4f} s")


if __name__ == "__main__":
    main()
