"""Exact and approximate properties of Wald's plans, for plans.csv in this folder.

Run here:  /usr/bin/python3 plans.py      (SciPy; written for this check, with SciPy's own probabilities)
"""
import numpy as np, scipy
from scipy import stats
from scipy.optimize import brentq

def pois(m): return lambda x: stats.poisson.pmf(x, m), lambda x: stats.poisson.sf(x, m)
def nbin(k): return lambda m: (lambda x: stats.nbinom.pmf(x, k, k / (k + m)), lambda x: stats.nbinom.sf(x, k, k / (k + m)))
def bern(p): return lambda x: stats.bernoulli.pmf(x, p), lambda x: stats.bernoulli.sf(x, p)

def lines(kind, m0, m1, k, al, be):
    """d and slope straight from the likelihood ratio of a count of 1 and a count of 0."""
    f = {"POISSON": pois, "BINOMIAL": bern}.get(kind) or nbin(k)
    p0, p1 = f(m0)[0], f(m1)[0]
    zero = np.log(p1(0) / p0(0)); one = np.log(p1(1) / p0(1))
    d = one - zero; s = -zero / d
    return f, d, s, np.log(be / (1 - al)) / d, np.log((1 - be) / al) / d

def exact(f, s, hl, hu, mean, most=None, rule=None):
    pmf, sf = f(mean); state = {0: 1.0}; low = high = und = asn = 0.0; n = 0
    while state and (most is None or n < most):
        n += 1; nxt = {}
        lo = np.floor(hl + s * n + 1e-9); hi = np.ceil(hu + s * n - 1e-9); stopped = 0.0
        for t, p in state.items():
            x = np.arange(0, max(0, int(hi - t))); w = p * pmf(x)
            up = p * sf(hi - t - 1); high += up; stopped += up
            for c, v in zip(x, w):
                if t + c <= lo: low += v; stopped += v
                else: nxt[t + c] = nxt.get(t + c, 0.0) + v
        if n == most:
            for t, v in nxt.items():
                if rule == "MIDDLE" and t / n < s: low += v
                elif rule == "MIDDLE": high += v
                else: und += v
                stopped += v
            nxt = {}
        asn += n * stopped
        state = nxt if sum(nxt.values()) > 1e-14 else {}
    return low, high, und, asn

rows = []
for pid, kind, m0, m1, k, al, be in [
    ("a", "BINOMIAL", .01, .10, 0, .05, .10), ("b", "BINOMIAL", .2, .4, 0, .1, .1), ("c", "POISSON", 1, 2, 0, .1, .1),
    ("d", "POISSON", .5, 1.5, 0, .05, .10), ("e", "NB", 2, 4, 1.5, .1, .1)]:
    f, d, s, hl, hu = lines(kind, m0, m1, k, al, be)
    A, B = (1 - be) / al, be / (1 - al)
    for h in (2, 1, .5, 0, -.5, -1, -2):
        def theta_gap(m):  # E[(p1/p0)^h] = 1 defines the mean at h
            pmf = f(m)[0]; x = np.arange(0, 2 if kind == "BINOMIAL" else 400)
            p = pmf(x); ok = p > 0; return float(np.sum(np.exp(np.log(p[ok]) + h * d * (x[ok] - s)))) - 1
        if h == 0: m = s
        else:
            # The mean lies below the slope for h > 0 and above it for h < 0; the slope itself is a root as well.
            ends = (1e-4, s * (1 - 1e-4)) if h > 0 else (s * (1 + 1e-4), .999 if kind == "BINOMIAL" else 30.0)
            m = brentq(theta_gap, *ends, xtol=1e-15)
        oc = np.log(A) / (np.log(A) - np.log(B)) if h == 0 else (A**h - 1) / (A**h - B**h)
        pmf = f(m)[0]; x = np.arange(0, 400); var = float(np.sum(pmf(x) * x * x)) - m * m if kind != "BINOMIAL" else m * (1 - m)
        asn = -hl * hu / var if h == 0 else (oc * hl + (1 - oc) * hu) / (m - s)
        low, high, und, n = exact(f, s, hl, hu, m)
        tl, th, tu, tn = exact(f, s, hl, hu, m, 12, "MIDDLE")
        ul, uh, uu, un = exact(f, s, hl, hu, m, 12, "NONE")
        rows.append((pid, kind, m0, m1, k, al, be, h, d, s, hl, hu, m, oc, asn, low, n, tl, tn, uu))
head = f"""# Wald's plans: lines, approximate and exact operating characteristic and average sample number, and the same
# plans ended after 12 units (by the middle: chance low and mean units; without a decision: chance undecided).
# Formulas: Wald 1947, Sequential Analysis (from memory). Plan a is that of the NIST/SEMATECH e-Handbook, section
# 6.2.6, which prints the lines -0.939 + 0.0397 n and 1.205 + 0.0397 n (from memory). Means at h solve E[(p1/p0)^h] = 1.
# Computed by plans.py, SciPy {scipy.__version__}, by a recursion over single totals. Tolerance: 1e-9."""
with open("plans.csv", "w", encoding="utf-8") as out:
    print(head, file=out)
    print("plan,family,low,high,k,alpha,beta,h,d,slope,low_intercept,high_intercept,mean,wald_low,wald_units,exact_low,exact_units,ended_low,ended_units,ended_undecided", file=out)
    for r in rows: print(",".join(str(v) if isinstance(v, (str, int)) else f"{v:.13g}" for v in r), file=out)
