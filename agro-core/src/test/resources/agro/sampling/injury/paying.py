"""Chance that treating pays, by quadrature with SciPy; prints the rows of paying.csv.

Cost triangular 38, 45, 60; price uniform 140 to 220; loss log-normal, median 0.035, factor 1.3; prevented share
triangular 0.7, 0.92, 0.98. The four are independent. P(C / (V b K) < d) = E over C, V, K of P(b > C / (d V K)).
The last column is the chance with a density that is gamma with mean d and standard deviation 0.25 d.
"""
import numpy as np
from scipy import stats

cost = stats.triang((45 - 38) / 22, 38, 22)
price = stats.uniform(140, 80)
prevented = stats.triang(0.22 / 0.28, 0.7, 0.28)
loss = stats.lognorm(np.log(1.3), scale=0.035)
n = 80
u = (np.arange(n) + 0.5) / n
c, v, k = np.meshgrid(cost.ppf(u), price.ppf(u), prevented.ppf(u), indexing="ij")
needed = c / (v * k)


def chance(d):
    return loss.sf(needed / d).mean()


def uncertain(d):
    spread = stats.gamma(16, scale=d / 16)
    return np.mean([chance(x) for x in spread.ppf((np.arange(60) + 0.5) / 60)])


print("density,chance,chance_uncertain")
for d in (4.0, 6.0, 8.0, 10.0, 14.0, 20.0):
    print(f"{d},{chance(d):.6f},{uncertain(d):.4f}")
