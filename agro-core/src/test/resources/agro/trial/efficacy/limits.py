"""Limits of efficacy from counts of individuals, for limits.csv.

Run with /usr/bin/python3 (SciPy, statsmodels). Scores: statsmodels confint_proportions_2indep,
compare="ratio", method="score", correction=False, which is Koopman 1984. Exact limits of two counts: the binomial
limits of Clopper and Pearson by scipy.stats.beta. Four counts: log of the ratio with normal limits. Errors by the delta method.
"""
import math
import scipy
import statsmodels
from scipy.stats import beta, norm
from statsmodels.stats.proportion import confint_proportions_2indep

print("# Limits of the share left (treated over control), level 0.95, by limits.py with SciPy "
      f"{scipy.__version__} and statsmodels {statsmodels.__version__}.")
print("# shares: x of m left of the treated, y of n of the control, limits by scores (Koopman 1984); error: standard error by the delta")
print("# method. counts: x pests on m units and y on n, exact limits (Przyborowski & Wilenski 1940). four: Ta=x, Tb=m, Ca=y, Cb=n.")
print("# The error of shares of 10 of 50 and 34 of 40 is that of Abbott's efficacy 0.7647 with treated survival .20, control .85: 0.0683616537.")
print("# Tolerance: relative 1e-6 (scores, which statsmodels finds by a search), 1e-9 (others).")
print("kind,x,m,y,n,low,high,error")
for x, m, y, n in [(10, 50, 34, 40), (0, 50, 34, 40), (3, 100, 90, 95), (45, 50, 30, 50), (1, 30, 2, 30)]:
    low, high = confint_proportions_2indep(x, m, y, n, method="score", compare="ratio", correction=False)
    pt, pc = x / m, y / n
    error = math.sqrt(pt * (1 - pt) / (m * pc**2) + pt**2 * pc * (1 - pc) / (n * pc**4))
    print(f"shares,{x},{m},{y},{n},{max(low, 0):.10g},{high:.10g},{error:.10g}")
for x, m, y, n in [(30, 40, 500, 40), (0, 40, 120, 40), (12, 30, 100, 40), (90, 10, 60, 10)]:
    low = 0 if x == 0 else beta.ppf(.025, x, y + 1)
    high = beta.ppf(.975, x + 1, y)
    print(f"counts,{x},{m},{y},{n},{low/(1-low)*n/m:.12g},{high/(1-high)*n/m:.12g},")
z = norm.ppf(.975)
for x, m, y, n in [(30, 280, 500, 300), (12, 150, 120, 160), (0, 150, 120, 160), (90, 100, 60, 100)]:
    h = .5 if x == 0 else 0
    log = math.log((x + h) * (n + h) / ((m + h) * (y + h)))
    se = math.sqrt(1 / (x + h) + 1 / (n + h) + 1 / (m + h) + 1 / (y + h))
    print(f"four,{x},{m},{y},{n},{0 if x == 0 else math.exp(log-z*se):.12g},{math.exp(log+z*se):.12g},")
