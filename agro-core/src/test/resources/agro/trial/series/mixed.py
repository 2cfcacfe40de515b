"""Mixed models of the barley yields and of growing chicks by statsmodels.

Run here: /usr/bin/python3 mixed.py > mixed.csv
ChickWeight is written by: Rscript -e 'write.csv(as.data.frame(ChickWeight), "chicks.csv")' and not kept.
"""
import io
import subprocess
import warnings
import numpy as np
import pandas as pd
import statsmodels
import statsmodels.formula.api as smf

warnings.filterwarnings("ignore")
print("# Variances by restricted likelihood of mixed models with crossed random terms.")
print("# Computed by statsmodels %s (MixedLM), mixed.py." % statsmodels.__version__)
print("# Tolerance: 1e-2 relative for variances, whose search stops early; 1e-4 for F; 1e-8 for means.")
print("case,name,value")


def put(case, name, value):
    print("%s,%s,%.10g" % (case, name, value))


barley = pd.read_csv("barley.csv", comment="#")
barley["one"] = 1
barley["place"] = barley.site + barley.year.astype(str)
barley["vs"] = barley.variety + barley.site
barley["vy"] = barley.variety + barley.year.astype(str)
parts = {n: "0 + C(%s)" % n for n in ["site", "year", "place", "vs", "vy"]}
fit = smf.mixedlm("yield_ ~ C(variety, Sum)", barley.rename(columns={"yield": "yield_"}), groups="one",
                  vc_formula=parts).fit(reml=True, method=["bfgs", "lbfgs"])
for name, value in zip(fit.model.exog_vc.names, fit.vcomp):
    put("barley", name, value)
put("barley", "residual", fit.scale)
means = barley.groupby("variety")["yield"].mean()
for name in means.index:
    put("barley", "mean " + name, means[name])

text = subprocess.run(
    ["Rscript", "-e", "write.csv(as.data.frame(ChickWeight), row.names = FALSE)"],
    capture_output=True, text=True, check=True).stdout
chicks = pd.read_csv(io.StringIO(text))
chicks = chicks[chicks.Time.isin([0, 4, 8, 12, 16, 20])]
fit = smf.mixedlm("weight ~ C(Diet) * C(Time)", chicks, groups="Chick").fit(reml=True)
put("chicks", "plot", fit.cov_re.iloc[0, 0])
put("chicks", "residual", fit.scale)
names = [n for n in fit.params.index if ":" in n]
wald = fit.wald_test(np.eye(len(fit.params))[[list(fit.params.index).index(n) for n in names]], scalar=True)
put("chicks", "product F", float(wald.statistic) / len(names))
