"""Proportional odds of the insect counts in classes by statsmodels.

Run here: /usr/bin/python3 scores.py > odds.csv
"""
import numpy as np
import pandas as pd
import statsmodels
from statsmodels.miscmodels.ordinal_model import OrderedModel

counts = {
    "A": "10 7 20 14 14 12 10 23 17 20 14 13", "B": "11 17 21 11 16 14 17 17 19 21 7 13",
    "C": "0 1 7 2 3 1 2 1 3 0 1 4", "D": "3 5 12 6 4 3 5 5 5 5 2 4",
    "E": "3 5 3 5 3 6 1 1 3 2 6 4", "F": "11 9 15 22 15 16 13 10 26 26 24 13"}
rows = [(s, int(c)) for s in counts for c in counts[s].split()]
data = pd.DataFrame(rows, columns=["spray", "count"])
score = np.searchsorted([2, 5, 10, 15], data["count"], side="left") + 1
dummies = pd.get_dummies(data.spray, drop_first=True).astype(float)
fit = OrderedModel(pd.Series(score), dummies, distr="logit").fit(method="bfgs", disp=False, gtol=1e-9, maxiter=500)
shares = np.bincount(score)[1:] / len(score)
null = float(np.sum(np.bincount(score)[1:] * np.log(shares)))
print("# InsectSprays (Beall 1942) in classes up to 2, 5, 10, 15, above: proportional odds by spray.")
print("# Computed by statsmodels %s (OrderedModel, logit), scores.py. Tolerance: 1e-6 relative, shares 1e-6." % statsmodels.__version__)
print("name,value")
print("deviance,%.10g" % (-2 * fit.llf))
print("ratio,%.10g" % (2 * (fit.llf - null)))
for s in counts:
    x = np.array([[1.0 if s == c else 0.0 for c in dummies.columns]])
    for k, p in enumerate(np.asarray(fit.model.predict(fit.params, exog=x))[0]):
        print("share %s %d,%.10g" % (s, k + 1, p))
