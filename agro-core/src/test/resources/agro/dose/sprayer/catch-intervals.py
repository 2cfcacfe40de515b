"""Relative standard errors and half widths of t intervals of catches, with NumPy and SciPy.

Run: python3 catch-intervals.py, which writes catch-intervals.csv beside this script.
Catches of one nozzle are separated by blanks, nozzles by "/". The samples are invented but the second, which is
the college exercise of five readings. The standard error of the mean of k nozzles of N is that of a two-stage sample
(Cochran 1977, chapter 10, value from memory), or s / sqrt(k) where each nozzle was caught once.
"""

import pathlib

import numpy
import scipy
from scipy import stats

SAMPLES = [
    ("1.30 1.32 1.28", 1),
    ("1.2 / 1.0 / 1.0 / 0.92 / 0.92", 5),
    ("1.21 1.19 1.20 / 1.17 1.18 1.22 / 1.25 1.23 1.21 / 1.16 1.19 1.20", 4),
    ("1.21 1.19 1.20 / 1.17 1.18 1.22 / 1.25 1.23 1.21 / 1.16 1.19 1.20", 24),
    ("0.80 0.82 / 0.79 0.83 0.81 / 0.85 0.84", 12),
]

rows = []
for text, on_sprayer in SAMPLES:
    nozzles = [numpy.array(part.split(), dtype=float) for part in text.split("/")]
    means = numpy.array([nozzle.mean() for nozzle in nozzles])
    k = len(nozzles)
    freedom = sum(len(nozzle) - 1 for nozzle in nozzles)
    between = means.var(ddof=1) if k > 1 else 0.0
    if freedom == 0:
        variance, df = between / k, k - 1
    else:
        within = sum(((nozzle - nozzle.mean()) ** 2).sum() for nozzle in nozzles) / freedom
        share = k / on_sprayer
        variance = (1 - share) * between / k + share * within * sum(1 / len(n) for n in nozzles) / k**2
        df = freedom if share == 1 else k - 1
    error = numpy.sqrt(variance) / means.mean()
    for level in (0.8, 0.95, 0.99):
        half = stats.t.ppf((1 + level) / 2, df) * error
        rows.append(f"{text},{on_sprayer},{level},{means.mean():.15g},{error:.15g},{df},{half:.15g}")

head = [
    "# Relative standard errors and half widths of t intervals of the mean flow of catches.",
    f"# Computed by NumPy {numpy.__version__} and SciPy {scipy.__version__}; call: python3 catch-intervals.py",
    "# Catches in L/min; catches of one nozzle separated by blanks, nozzles by a stroke. Tolerance: 1e-9 as a share.",
    "catches,on_sprayer,level,mean,relative_error,degrees_of_freedom,half_width",
]
pathlib.Path(__file__).with_suffix(".csv").write_text("\n".join(head + rows) + "\n", encoding="utf-8")
