"""Writes statsmodels.csv. Call: /usr/bin/python3 restricted-likelihood.py (after Rscript mixed-values.R)"""
import sys, warnings
import numpy, pandas, statsmodels
import statsmodels.formula.api as smf
warnings.simplefilter("ignore")
table = pandas.read_csv("mixed-values.csv", comment="#", dtype=str).fillna("")
table["y"] = table.value.astype(float)
MODELS = [("oats", "oats", "y ~ C(fixed, Sum) * C(other, Sum)", {"nested": "0 + C(nested)"}),
          ("oats with gaps", "oats with gaps", "y ~ C(fixed, Sum) * C(other, Sum)", {"nested": "0 + C(nested)"}),
          ("npk", "npk", "y ~ C(fixed, Sum) * C(other, Sum)", {}),
          ("chicks equal correlation", "chicks", "y ~ C(fixed, Sum) * C(other, Sum)", {})]
with open("statsmodels.csv", "w") as out:
    out.write("# Restricted and full likelihood with variances (random terms in order, residual).\n"
              f"# Computed by statsmodels {statsmodels.__version__} (MixedLM), Python {sys.version.split()[0]}.\n"
              "#   call: /usr/bin/python3 restricted-likelihood.py\n"
              "# Tolerance: 1e-6 for the likelihood, 1e-3 relative for variances (its search stops early).\n"
              "model,kind,logLikelihood,variances\n")
    for name, set_, formula, parts in MODELS:
        d = table[table.set == set_].reset_index(drop=True)
        group = "subject" if set_ == "chicks" else "group"
        for kind in ("RESTRICTED", "FULL"):
            m = smf.mixedlm(formula, d, groups=d[group], re_formula="1", vc_formula=parts or None)
            fits = []
            for method in ("lbfgs", "bfgs", "cg", "powell"):
                try:
                    fits.append(m.fit(reml=kind == "RESTRICTED", method=method))
                except numpy.linalg.LinAlgError:
                    pass  # its search has left the place where the likelihood exists
            f = max(fits, key=lambda fit: fit.llf)
            v = [f.cov_re.iloc[0, 0]] + list(f.vcomp) + [f.scale]
            out.write("%s,%s,%.10g,%s\n" % (name, kind, f.llf, " ".join("%.8g" % x for x in v)))
