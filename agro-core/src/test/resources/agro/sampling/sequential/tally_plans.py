"""Wald's plans on the share of units above a tally, ended after 60 units, exactly; prints tally-plans.csv.

Shares from SciPy's negative binomial and Poisson, the plan by a recursion over single totals.
"""
import numpy as np
from scipy import stats


def share(mean, k, tally):
    if np.isinf(k):
        return stats.poisson.sf(tally, mean)
    return stats.nbinom.sf(tally, k, k / (k + mean))


def exact(p, low, slope, high, most):
    mass, chance_low, units = {0: 1.0}, 0.0, 0.0
    for n in range(1, most + 1):
        following = {}
        for total, m in mass.items():
            for x, q in ((0, 1 - p), (1, p)):
                following[total + x] = following.get(total + x, 0) + m * q
        mass = {}
        for total, m in following.items():
            if total <= low + slope * n + 1e-9:
                chance_low += m
                units += n * m
            elif total >= high + slope * n - 1e-9:
                units += n * m
            elif n == most:
                chance_low += m if total / n < slope else 0
                units += n * m
            else:
                mass[total] = m
    return chance_low, units


print("k,tally,fields_k,mean,share_low,share_high,chance_low,units")
for k, tally, fields in ((0.9, 0, 0.9), (0.9, 2, 0.9), (0.9, 2, 0.45), (np.inf, 3, np.inf), (1.5, 5, 3.0)):
    p0, p1 = share(2, k, tally), share(4, k, tally)
    d = np.log(p1 * (1 - p0) / (p0 * (1 - p1)))
    slope = np.log((1 - p0) / (1 - p1)) / d
    for mean in (1.0, 2.0, 3.0, 4.0, 6.0):
        low, units = exact(share(mean, fields, tally), np.log(0.1 / 0.9) / d, slope, np.log(0.9 / 0.1) / d, 60)
        print(f"{k},{tally},{fields},{mean},{p0:.13g},{p1:.13g},{low:.12g},{units:.12g}")
