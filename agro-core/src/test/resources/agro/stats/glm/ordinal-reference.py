"""Reference values of cumulative link models and of negative binomial regression, by statsmodels.

/usr/bin/python3 ordinal-reference.py > ordinal-reference.csv
"""
import warnings
import numpy as np
import scipy
import statsmodels
import statsmodels.api as sm
from scipy import stats
from statsmodels.miscmodels.ordinal_model import OrderedModel

warnings.simplefilter("ignore")
HOUSING = """21 21 28 34 22 36 10 11 36 61 23 17 43 35 40 26 18 54 13 9 10 8 8 12 6 7 9 18 6 7 15 13 13 7 5 11
14 19 37 17 23 40 3 5 23 78 46 43 48 45 86 15 25 62 20 23 20 10 22 24 7 10 21 57 23 13 31 21 13 5 6 13"""
SAT, INFL = ["Low", "Medium", "High"], ["Low", "Medium", "High"]
TYPE, CONT = ["Tower", "Apartment", "Atrium", "Terrace"], ["Low", "High"]


def rows():
    counts = iter(int(c) for c in HOUSING.split())
    for cont in range(2):
        for kind in range(4):
            for infl in range(3):
                for sat in range(3):
                    yield sat, infl, kind, cont, next(counts)


def line(case, quantity, value):
    print(f"{case},{quantity},{value:.12g}")


def design(table):
    sat, x = [], []
    for s, i, t, c, f in table:
        sat += [s] * f
        x += [[i == 1, i == 2, t == 1, t == 2, t == 3, c == 1]] * f
    return np.array(sat), np.array(x, float)


def brute(y, x, link, start):
    """Newton on the log-likelihood with the Hessian of statsmodels, for more digits."""
    model = OrderedModel(y, x, distr=link)
    fit = model.fit(method="bfgs", start_params=start, maxiter=2000, gtol=1e-9, disp=False)
    b = fit.params
    for _ in range(8):
        b = b - np.linalg.solve(model.hessian(b), model.score(b))
    return model, b, np.sqrt(np.diag(np.linalg.inv(-model.hessian(b))))


print("# Satisfaction with housing, Madsen 1976, Scandinavian Journal of Statistics 3:97-106, as in the data set housing of")
print("# Venables and Ripley 2002, Modern Applied Statistics with S, section 7.3 (counts from memory; the published residual")
print("# deviance of 3479.149 of proportional odds is met, as is its table of coefficients).")
print(f"# Computed by ordinal-reference.py with statsmodels {statsmodels.__version__}, scipy {scipy.__version__}; coefficients in")
print("# the order InflMedium, InflHigh, Apartment, Atrium, Terrace, ContHigh, then cut points. Tolerance 1e-6 (numerical")
print("# derivatives), 1e-9 for the log-likelihood. nb-exposure: insect sprays, Beall 1942, negative binomial with an exposure;")
print("# its errors are those of coefficients and shape together, from the observed information.")
print("case,quantity,value")
y, x = design(rows())
for name, link in (("logit", "logit"), ("probit", "probit")):
    model, b, se = brute(y, x, link, None)
    k = x.shape[1]
    cuts = model.transform_threshold_params(b)[1:-1]
    line(name, "loglik", model.loglike(b))
    for j in range(k):
        line(name, f"estimate{j + 1}", b[j])
        line(name, f"error{j + 1}", se[j])
    for j in range(2):
        line(name, f"cut{j + 1}", cuts[j])
    for drop, cols in (("Infl", [2, 3, 4, 5]), ("Type", [0, 1, 5]), ("Cont", [0, 1, 2, 3, 4])):
        less, bl, _ = brute(y, x[:, cols], link, None)
        line(name, f"lr{drop}", 2 * (model.loglike(b) - less.loglike(bl)))


# Score test of proportional odds: score and expected information of separate coefficients, written out anew.
def score_test(b, cuts):
    n, k = x.shape
    big = np.zeros(2 * (k + 1))
    info = np.zeros((2 * (k + 1), 2 * (k + 1)))
    xb = x @ b
    g = stats.logistic.cdf(cuts[None, :] - xb[:, None])
    f = stats.logistic.pdf(cuts[None, :] - xb[:, None])
    p = np.c_[g[:, 0], g[:, 1] - g[:, 0], 1 - g[:, 1]]
    d = np.zeros((n, 3, 2))
    d[:, 0, 0], d[:, 1, 0], d[:, 1, 1], d[:, 2, 1] = f[:, 0], -f[:, 0], f[:, 1], -f[:, 1]
    z = np.c_[np.ones(n), -x]
    for i in range(n):
        u = d[i, y[i]] / p[i, y[i]]
        big += np.kron(u, z[i])
        w = sum(np.outer(d[i, c], d[i, c]) / p[i, c] for c in range(3))
        info += np.kron(w, np.outer(z[i], z[i]))
    return big @ np.linalg.solve(info, big)


model, b, se = brute(y, x, "logit", None)
cuts = model.transform_threshold_params(b)[1:-1]
line("logit", "parallel", score_test(b[: x.shape[1]], cuts))

# Negative binomial regression of the insect sprays on spray with an exposure, shape estimated (alpha = 1 / shape).
counts = np.array([10, 7, 20, 14, 14, 12, 10, 23, 17, 20, 14, 13, 11, 17, 21, 11, 16, 14, 17, 17, 19, 21, 7, 13,
                   0, 1, 7, 2, 3, 1, 2, 1, 3, 0, 1, 4, 3, 5, 12, 6, 4, 3, 5, 5, 5, 5, 2, 4,
                   3, 5, 3, 5, 3, 6, 1, 1, 3, 2, 6, 4, 11, 9, 15, 22, 15, 16, 13, 10, 26, 26, 24, 13])
spray = np.repeat(np.arange(6), 12)
X = np.column_stack([np.ones(72)] + [(spray == s).astype(float) for s in range(1, 6)])
exposure = np.tile([1, 2, 3, 0.5], 18)
nb = sm.NegativeBinomial(counts, X, exposure=exposure)
fit = nb.fit(method="bfgs", maxiter=5000, gtol=1e-10, disp=False)
p = fit.params
for _ in range(10):
    p = p - np.linalg.solve(nb.hessian(p), nb.score(p))
se = np.sqrt(np.diag(np.linalg.inv(-nb.hessian(p))))
for j in range(6):
    line("nb-exposure", f"estimate{j + 1}", p[j])
    line("nb-exposure", f"error{j + 1}", se[j])
line("nb-exposure", "shape", 1 / p[6])
line("nb-exposure", "shapeerror-joint", se[6] / p[6] ** 2)
line("nb-exposure", "loglik", nb.loglike(p))
