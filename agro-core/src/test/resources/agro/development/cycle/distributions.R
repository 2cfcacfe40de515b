# Check values of distributed development in base R. Run in this folder:  Rscript distributions.R
# Writes distributions.csv. No value comes from the library.
rows <- list()
add <- function(kind, a, b, c, quantity, at, value)
  rows[[length(rows) + 1]] <<- data.frame(kind, a, b, c, quantity, at, value = sprintf("%.10f", value))
erlang <- function(k, x) pgamma(x, shape = k, rate = k)
for (t in c(15, 20, 25, 30)) add("ERLANG", 10, "", "", "completed", t / 20, erlang(10, t / 20))
for (x in c(300, 350, 400, 416.7, 450, 500, 550)) add("ERLANG", 30, "", "", "completed", x / 416.7, erlang(30, x / 416.7))
for (k in c(1, 2, 4, 25, 100)) add("ERLANG", k, "", "", "completed", 1, erlang(k, 1))
for (p in c(.05, .5, .95)) add("ERLANG", 30, "", "", "age_at", p, qgamma(p, 30, 30))
add("ERLANG", 10, "", "", "age_at", 0.5, qgamma(.5, 10, 10))
add("ERLANG", 10, "", "", "density", 1, dgamma(1, 10, 10))
weibull <- function(a, g, e, b) pweibull(a - g, shape = b, scale = e)
for (a in c(.5, .8, .9, 1, 1.1, 1.3)) add("WEIBULL", 0.7, 0.33, 2.5, "completed", a, weibull(a, .7, .33, 2.5))
add("WEIBULL", 0.7, 0.33, 2.5, "age_at", 0.5, .7 + qweibull(.5, 2.5, .33))
for (b in c(5, 10)) for (a in c(.8, .9, 1, 1.1, 1.2)) add("WEIBULL_MEDIAN_ONE", 0, b, "", "completed", a,
  pweibull(a, b, 1 / log(2)^(1 / b)))
for (cv in c(.1, .2)) for (x in c(.8, .9, 1, 1.1, 1.25)) add("NORMAL_RATES", cv, "", "", "completed", x, pnorm((1 - 1 / x) / cv))
add("NORMAL_RATES", 0.1, "", "", "age_at", 0.95, 1 / (1 - 0.1 * qnorm(0.95)))
for (x in c(300, 400, 443.9, 500, 600)) add("LOGISTIC", 443.9, 60, "", "completed", x, plogis(x, 443.9, 60))
for (p in c(.05, .95)) add("LOGISTIC", 443.9, 60, "", "age_at", p, qlogis(p, 443.9, 60))
s <- pi * 60 / sqrt(3)
for (x in c(300, 400, 443.9, 500, 600)) add("NORMAL", 443.9, sprintf("%.12f", s), "", "completed", x, pnorm(x, 443.9, s))
for (p in c(.05, .95)) add("NORMAL", 443.9, sprintf("%.12f", s), "", "age_at", p, qnorm(p, 443.9, s))
for (t in c(80, 100, 120, 150)) for (i in 1:2) add("ORDINAL", 100 * i, 1.5, i - 1, "completed", t,
  plogis((100 * i - t) / sqrt(1.5 * t)))
add("ERLANG_SURVIVAL", 10, 0.02, 20, "survival", "", integrate(function(t) dgamma(t, 10, rate = 10 / 20) * exp(-.02 * t), 0, 400, rel.tol = 1e-12)$value)
add("ERLANG_SURVIVAL", 25, 0.05, 12, "survival", "", integrate(function(t) dgamma(t, 25, rate = 25 / 12) * exp(-.05 * t), 0, 200, rel.tol = 1e-12)$value)
out <- do.call(rbind, rows)
header <- c("# Shares completed, ages and survival of the distributions of development. Parameter sets: Erlang k 30 with",
  "# the 416.7 degree-days C of Tuta absoluta (Krechemer & Foerster 2015, Eur. J. Entomol. 112, abstract); logistic about",
  "# 443.9, the first male flight of Lobesia botrana (Heit, Sione & Cortese 2015, J. Crop Prot. 4(Suppl.):605-615, abstract),",
  "# its scale 60 chosen here; the others illustrate. Formulas: Manetsch 1976, Wagner et al. 1984, Sharpe et al. 1981,",
  "# Dennis, Kemp & Beckwith 1986 (from memory). Ages of ERLANG, WEIBULL and NORMAL_RATES are over the mean or median.",
  paste0("# Computed by distributions.R with ", R.version.string, ". Tolerance: 1e-8."))
con <- file("distributions.csv", "w", encoding = "UTF-8")
writeLines(header, con); write.csv(out, con, row.names = FALSE, quote = FALSE); close(con)
