# Dose-response curves in base R. Run in this folder:  Rscript fits.R   Writes computed-fits.csv.
# glm and optim stop about the ninth digit; Newton's steps on the analytic score take the curves to the end.
groups <- read.csv("groups.csv", comment.char = "#")
wanted <- read.csv("published-fits.csv", comment.char = "#", colClasses = "character")
links <- list(
  PROBIT = list(F = pnorm, G = function(e) pnorm(-e), f = dnorm),
  LOGIT = list(F = plogis, G = function(e) plogis(-e), f = dlogis),
  COMPLEMENTARY_LOG_LOG = list(F = function(e) -expm1(-exp(e)), G = function(e) exp(-exp(e)), f = function(e) exp(e - exp(e))))
quantile_of <- function(link, p) switch(link, PROBIT = qnorm(p), LOGIT = qlogis(p), log(-log1p(-p)))
fit <- function(set, link, scale, natural) {
  g <- groups[groups$set == set, ]
  # the beetles' doses are logarithms as printed; on a log scale they are the same numbers
  x <- if (set == "beetles" || scale == "PLAIN") g$dose else if (scale == "LN") log(g$dose) else log10(g$dose)
  control <- set != "beetles" & g$dose == 0
  free <- natural == "model"
  if (!free && any(control)) { g <- g[!control, ]; x <- x[!control]; control <- control[!control] }
  n <- g$n; r <- g$responded; L <- links[[link]]; known <- if (natural %in% c("none", "model")) 0 else as.numeric(natural)
  z <- ifelse(control, 0, x)
  parts <- function(t) { C <- if (free) t[3] else known; e <- t[1] + t[2] * z
    Fe <- ifelse(control, 0, L$F(e)); Ge <- ifelse(control, 1, L$G(e)); fe <- ifelse(control, 0, L$f(e))
    list(P = C + (1 - C) * Fe, Q = (1 - C) * Ge, D = cbind((1 - C) * fe, (1 - C) * fe * z, Ge)[, 1:length(t), drop = FALSE]) }
  score <- function(t) { p <- parts(t); colSums((ifelse(r > 0, r / p$P, 0) - ifelse(n > r, (n - r) / p$Q, 0)) * p$D) }
  observed <- function(t) -sapply(seq_along(t), function(i) { h <- 1e-3 * max(0.01, abs(t[i])); v <- function(k) { u <- t; u[i] <- u[i] + k * h; score(u) }
    (45 * (v(1) - v(-1)) - 9 * (v(2) - v(-2)) + (v(3) - v(-3))) / (60 * h) })
  expected <- function(t) { p <- parts(t); t(p$D) %*% (n / (p$P * p$Q) * p$D) }
  dosed <- !control
  start <- coef(suppressWarnings(glm(cbind(r, n - r)[dosed, ] ~ z[dosed], family = binomial(switch(link, PROBIT = "probit", LOGIT = "logit", "cloglog")))))
  t <- unname(if (free) c(start, max(0.01, r[control] / n[control])) else start)
  # Fisher's steps first, halved while they lower the likelihood
  value <- function(t) { p <- parts(t); if (any(p$P <= 0 | p$Q <= 0)) -Inf else sum(ifelse(r > 0, r * log(p$P), 0) + ifelse(n > r, (n - r) * log(p$Q), 0)) }
  for (i in 1:100) { d <- solve(expected(t), score(t)); while (value(t + d) < value(t) - 1e-9) d <- d / 2; t <- t + d }
  for (i in 1:10) t <- t + solve(observed(t), score(t))
  p <- parts(t); e2 <- function(s, m) ifelse(s == 0, 0, s * log(s / m))
  list(t = t, link = link, df = length(n) - length(t), deviance = 2 * sum(e2(r, n * p$P) + e2(n - r, n * p$Q)),
    pearson = sum((r - n * p$P)^2 / (n * p$P * p$Q)), ll = sum(dbinom(r, n, p$P, log = TRUE)),
    EXPECTED = solve(expected(t)), OBSERVED = solve(observed(t)), up = if (scale == "LN") exp else if (scale == "PLAIN") identity else function(v) 10^v)
}
quantity <- function(f, information, rule, name) {
  V <- f[[information]]; a <- f$t[1]; b <- f$t[2]
  h <- if (rule == "ALWAYS") f$pearson / f$df else 1
  k <- if (rule == "ALWAYS") qt(0.975, f$df) else qnorm(0.975)
  plain <- list(a = a, b = b, natural = if (length(f$t) > 2) f$t[3] else 0, a_error = sqrt(V[1, 1]), b_error = sqrt(V[2, 2]),
    natural_error = if (length(f$t) > 2) sqrt(V[3, 3]) else 0, covariance = V[1, 2], deviance = f$deviance, pearson = f$pearson, df = f$df,
    log_likelihood = f$ll, aic = 2 * length(f$t) - 2 * f$ll, factor = h)
  if (!is.null(plain[[name]])) return(plain[[name]])
  p <- as.numeric(gsub("[^0-9]", "", name)) / 100; what <- gsub("[0-9]", "", name)
  m <- (quantile_of(f$link, p) - a) / b
  g <- k^2 * h * V[2, 2] / b^2
  middle <- m + g / (1 - g) * (m + V[1, 2] / V[2, 2])
  half <- k / (b * (1 - g)) * sqrt(h * (V[1, 1] + 2 * m * V[1, 2] + m^2 * V[2, 2] - g * (V[1, 1] - V[1, 2]^2 / V[2, 2])))
  switch(what, dose = f$up(m), place = m, place_error = sqrt(h * (V[1, 1] + 2 * m * V[1, 2] + m^2 * V[2, 2])) / b,
    low = f$up(middle - half), high = f$up(middle + half), g = g)
}
known <- list()
values <- apply(wanted, 1, function(w) {
  key <- paste(w[1:4], collapse = " ")
  if (is.null(known[[key]])) known[[key]] <<- fit(w[["set"]], w[["link"]], w[["scale"]], w[["natural"]])
  sprintf("%.12g", quantity(known[[key]], w[["information"]], w[["rule"]], w[["quantity"]]))
})
con <- file("computed-fits.csv", "w")
writeLines(c(paste0("# The quantities of published-fits.csv computed by fits.R with ", R.version.string, ". Tolerance: 1e-9 relative."),
  paste(names(wanted), collapse = ",")), con)
wanted$value <- values
write.table(wanted, con, sep = ",", quote = FALSE, row.names = FALSE, col.names = FALSE)
close(con)
