# Scores of date forecasts, by direct summation and by numerical integration of the squared
# difference of distribution functions. Call: Rscript date-scores.R (writes beside itself).
options(digits = 15)
obs <- c(121, 118, 125, 130, 115); fc <- c(119, 120, 125, 127, 118)
version <- R.version.string
head <- function(what, tolerance)
  c(paste0("# ", what), paste0("# Computed by ", version, "; call: Rscript date-scores.R"),
    paste0("# Tolerance: ", tolerance))
put <- function(file, lines) writeLines(lines, file)
num <- function(x) trimws(formatC(x, digits = 15, format = "g"))

err <- fc - obs
put("point-scores.csv", c(
  head("Errors of date forecasts in days and skill in MAE over the mean of the observations", "1e-12 absolute."),
  "forecast,observed,bias,mae,rmse,reference,referenceMae,skill",
  paste(paste(fc, collapse = " "), paste(obs, collapse = " "), num(mean(err)), num(mean(abs(err))),
        num(sqrt(mean(err^2))), num(mean(obs)), num(mean(abs(obs - mean(obs)))),
        num(1 - mean(abs(err)) / mean(abs(obs - mean(obs)))), sep = ",")))

crps <- function(F, y, lo, hi)
  integrate(function(x) F(x)^2, lo, y, rel.tol = 1e-12, subdivisions = 2000)$value +
  integrate(function(x) (F(x) - 1)^2, y, hi, rel.tol = 1e-12, subdivisions = 2000)$value
rows <- list(c(0, 1, 0), c(0, 1, 1), c(120, 4, 121), c(120, 4, 126), c(120, 2, 126), c(120, 8, 126),
             c(120, 4, 90), c(150.25, 0.5, 150.5))
put("crps-normal.csv", c(
  head("CRPS of a normal forecast, Gneiting et al. (2005) Mon. Weather Rev. 133:1098-1118 (formula from memory).\n# closed: pnorm and dnorm in the closed form; integral: the definition by integrate()", "closed 1e-12 absolute, integral 1e-7 absolute."),
  "mean,sd,observed,closed,integral",
  sapply(rows, function(r) { z <- (r[3] - r[1]) / r[2]
    closed <- r[2] * (z * (2 * pnorm(z) - 1) + 2 * dnorm(z) - 1 / sqrt(pi))
    i <- crps(function(x) pnorm(x, r[1], r[2]), r[3], min(r[1] - 12 * r[2], r[3] - r[2]), max(r[1] + 12 * r[2], r[3] + r[2]))
    paste(num(r[1]), num(r[2]), num(r[3]), num(closed), num(i), sep = ",") })))

step <- function(x, y, horizon = Inf) {
  knots <- sort(unique(c(pmin(x, horizon), min(y, horizon), if (is.finite(horizon)) horizon)))
  if (length(knots) == 1) 0 else sum(sapply(seq_len(length(knots) - 1), function(i) {
    (mean(x <= knots[i]) - (y <= knots[i]))^2 * (knots[i + 1] - knots[i]) })) }
ens <- list(list(c(118, 120, 125), 121), list(c(118, 120, 125), 100), list(c(7), 9.5),
            list(c(3, 3, 8, 1, 10.5), 3), list(c(250, 240), 245))
put("crps-ensemble.csv", c(
  head("CRPS of an ensemble, Hersbach (2000) Weather Forecast. 15:559-570 (formula from memory), and its fair form.\n# integral: the squared difference of the step functions summed piece by piece", "1e-12 absolute."),
  "members,observed,crps,fair,integral",
  sapply(ens, function(e) { x <- e[[1]]; y <- e[[2]]; m <- length(x); d <- sum(abs(outer(x, x, "-")))
    paste(paste(x, collapse = " "), num(y), num(mean(abs(x - y)) - d / (2 * m^2)),
          num(mean(abs(x - y)) - if (m > 1) d / (2 * m * (m - 1)) else 0), num(step(x, y)), sep = ",") })))
cut <- list(list(c(118, 120, 125, Inf), 121, 140), list(c(118, 120, Inf, Inf), Inf, 140),
            list(c(Inf, Inf), Inf, 140), list(c(Inf, Inf), 130, 140), list(c(118, 150, 125), 121, 130),
            list(c(118, 120, 125), Inf, 130))
put("crps-cut.csv", c(
  head("CRPS up to a horizon with outcomes and observations that are not reached (Inf):\n# integral over x <= horizon only, Gneiting & Ranjan (2011) J. Bus. Econ. Stat. 29:411-422 (from memory)", "1e-12 absolute."),
  "outcomes,observed,horizon,crps",
  sapply(cut, function(e) paste(gsub("Inf", "Infinity", paste(e[[1]], collapse = " ")),
    gsub("Inf", "Infinity", num(e[[2]])), e[[3]], num(step(e[[1]], e[[2]], e[[3]])), sep = ","))))

q <- list(list(c(.1, .25, .5, .75, .9), c(110, 115, 120, 126, 133), 0, 121, 160),
          list(c(.1, .25, .5, .75, .9), c(110, 115, 120, 126, Inf), 0.2, Inf, 160),
          list(c(.1, .25, .5, .75, .9), c(110, 115, 120, 126, Inf), 0.2, 140, 160),
          list(c(.1, .5, .9), c(110, Inf, Inf), 0.7, 105, 160), list(c(.5), c(Inf), 0.9, 120, 160))
put("crps-quantiles.csv", c(
  head("CRPS of a distribution function that is straight between a few quantiles, by integrate() piece by piece.\n# Below the first quantile its mass is on it; above the last finite one the mass goes evenly to the horizon\n# when the next is not reached, else it is on it.", "1e-9 absolute."),
  "probabilities,quantiles,chanceNot,observed,horizon,crps",
  sapply(q, function(e) { p <- e[[1]]; x <- e[[2]]; fin <- is.finite(x); h <- e[[5]]; y <- e[[4]]
    px <- c(x[fin], if (any(!fin)) h); pp <- c(p[fin], if (any(!fin)) max(1 - e[[3]], p[fin]))
    F <- function(t) sapply(t, function(u) if (length(px) == 0 || u < px[1]) 0 else
      if (length(px) == 1 || u >= px[length(px)]) (if (any(!fin)) pp[length(pp)] else 1) else approx(px, pp, u)$y)
    cuts <- sort(unique(c(0, px, min(y, h), h))); cuts <- cuts[cuts <= h]
    total <- sum(sapply(seq_len(length(cuts) - 1), function(i) integrate(function(t) (F(t) - (y <= t))^2,
      cuts[i], cuts[i + 1], rel.tol = 1e-11)$value))
    paste(paste(p, collapse = " "), gsub("Inf", "Infinity", paste(x, collapse = " ")), e[[3]],
          gsub("Inf", "Infinity", num(y)), h, num(total), sep = ",") })))

iv <- rbind(c(114, 124), c(119, 125), c(121, 129), c(122, 132), c(113, 119))
score <- (iv[, 2] - iv[, 1]) + 2 / 0.2 * (pmax(iv[, 1] - obs, 0) + pmax(obs - iv[, 2], 0))
put("interval-scores.csv", c(
  head("Interval score, Gneiting & Raftery (2007) JASA 102:359-378 (formula from memory), alpha = 0.2", "1e-12 absolute."),
  "low,high,observed,probability,inside,score",
  paste(iv[, 1], iv[, 2], obs, 0.8, as.integer(obs >= iv[, 1] & obs <= iv[, 2]), num(score), sep = ",")))
cp <- rbind(c(4, 5), c(0, 7), c(7, 7), c(18, 20), c(40, 50), c(431, 500))
put("binomial-intervals.csv", c(
  head("Exact binomial interval by binom.test, 95 % and 99 %", "1e-9 absolute."),
  "inside,forecasts,confidence,low,high",
  unlist(lapply(c(0.95, 0.99), function(cl) apply(cp, 1, function(r) { b <- binom.test(r[1], r[2], conf.level = cl)$conf.int
    paste(r[1], r[2], cl, num(b[1]), num(b[2]), sep = ",") })))))
