"""Tails of the studentised range for studentised-range-tails.csv, with SciPy.

Run: /usr/bin/python3 studentised-range-tails.py, which writes studentised-range-tails.csv beside this script.
"""

import pathlib

import scipy
from scipy.integrate import quad
from scipy.special import gammaln, log_ndtr, ndtr
from scipy.stats import studentized_range
import numpy as np


def range_above(w, r):
    """Chance that r standard normal numbers have a range above w, without cancellation."""
    def integrand(z):
        share = np.exp(log_ndtr(z - w) - log_ndtr(z))
        lost = -np.expm1((r - 1) * np.log1p(-share)) if share < 1 else 1.0
        return r * np.exp(-0.5 * z * z + (r - 1) * log_ndtr(z)) / np.sqrt(2 * np.pi) * lost
    middle = max(0.5 * w, 0.5)
    return sum(quad(integrand, a, b, epsabs=0, epsrel=1e-12, limit=200)[0]
               for a, b in ((middle - 9, middle - 2), (middle - 2, middle + 2), (middle + 2, middle + 9)))


def above(q, r, df):
    """Upper tail by nested adaptive quadrature over the deviation."""
    if np.isinf(df):
        return range_above(q, r)
    log_constant = np.log(2) + 0.5 * df * np.log(0.5 * df) - gammaln(0.5 * df)
    def integrand(t):
        s = np.exp(t)
        return np.exp(log_constant + df * t - 0.5 * df * s * s) * range_above(q * s, r)
    peak = -0.5 * np.log1p(q * q / (2 * df))
    width = 1 / np.sqrt(2 * df)
    left = 40 / df + 6 * width
    cuts = (peak - left, peak - 6 * width, peak - 2 * width, peak + 2 * width, peak + 6 * width,
            max(peak, 0) + 9 * width)
    return sum(quad(integrand, a, b, epsabs=0, epsrel=1e-10, limit=200)[0]
               for a, b in zip(cuts, cuts[1:]))


lines = [
    "# Upper tail of the studentised range.",
    f"# Computed by SciPy {scipy.__version__}: nested adaptive quadrature (scipy.integrate.quad) of the two",
    "#   integrals with the complement inside; 'library' is studentized_range.sf, good to about 1e-14 absolute.",
    "#   call: /usr/bin/python3 studentised-range-tails.py",
    "# Tolerance: 1e-8 relative against the quadrature, 1e-10 absolute against the library.",
    "means,df,q,above,library"]
for r, df, qs in (
        (2, 1, (3, 40, 1e5)), (3, 1, (10, 1000)), (3, 2, (4, 30, 400)), (6, 2.5, (5, 60)),
        (6, 12, (4, 9, 20)), (6, 66, (4.15, 11, 15)), (20, 5, (6, 40)), (20, 30.7, (5, 9, 14)),
        (60, 10, (7, 16)), (100, 120, (6, 9)), (200, 4, (9, 60)), (4, 2000, (3.6, 10)),
        (10, np.inf, (4.5, 8, 14)), (150, np.inf, (5.8, 9))):
    for q in qs:
        # The library gives 0 far out.
        library = f"{studentized_range.sf(q, r, df):.12e}" if q <= 1e4 else ""
        lines.append(f"{r},{'Infinity' if np.isinf(df) else df},{q},{above(q, r, df):.12e},{library}")
        print(lines[-1], flush=True)
pathlib.Path(__file__).with_suffix(".csv").write_text("\n".join(lines) + "\n", encoding="utf-8")
