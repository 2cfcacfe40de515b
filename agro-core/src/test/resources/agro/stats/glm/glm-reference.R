# Reference values of generalised linear models, by base R alone.
# Rscript glm-reference.R > glm-reference.csv
tight <- glm.control(epsilon = 1e-14, maxit = 200)
line <- function(case, quantity, value)
  cat(sprintf("%s,%s,%.15g\n", case, quantity, value))
report <- function(case, fit, aic = TRUE) {
  s <- coef(summary(fit))
  for (i in seq_along(rownames(s))) {
    line(case, paste0("estimate", i), s[i, 1])
    line(case, paste0("error", i), s[i, 2])
  }
  line(case, "deviance", deviance(fit))
  line(case, "null", fit$null.deviance)
  line(case, "pearson", sum(residuals(fit, "pearson")^2))
  line(case, "df", df.residual(fit))
  line(case, "dispersion", summary(fit)$dispersion)
  if (aic) {
    line(case, "loglik", as.numeric(logLik(fit)))
    line(case, "aic", AIC(fit))
  }
  line(case, "leverage1", hatvalues(fit)[[1]])
  line(case, "rdeviance1", residuals(fit, "deviance")[[1]])
  line(case, "rpearson1", residuals(fit, "pearson")[[1]])
  line(case, "rstandard1", rstandard(fit)[[1]])
}
cat("# Generalised linear models. Computed with glm of", R.version.string, "by glm-reference.R.\n")
cat("# Data: warpbreaks (Tippett 1950), esoph (Breslow and Day 1980), infert (Trichopoulos 1976),\n")
cat("# InsectSprays (Beall 1942), clotting times (McCullagh and Nelder 1989), beetles (Bliss 1935).\n")
cat("# Tolerance 1e-8 relative.\n")
cat("case,quantity,value\n")
report("warpbreaks", glm(breaks ~ wool * tension, poisson, warpbreaks, control = tight))
report("warpbreaks-quasi", glm(breaks ~ wool + tension, quasipoisson, warpbreaks, control = tight), FALSE)
report("warpbreaks-identity", glm(breaks ~ wool + tension, poisson("identity"), warpbreaks, control = tight))
e <- esoph
e$agegp <- factor(e$agegp, ordered = FALSE)
e$tobgp <- factor(e$tobgp, ordered = FALSE)
e$alcgp <- factor(e$alcgp, ordered = FALSE)
fe <- glm(cbind(ncases, ncontrols) ~ agegp + tobgp + alcgp, binomial, e, control = tight)
report("esoph", fe)
report("esoph-quasi", glm(cbind(ncases, ncontrols) ~ agegp + tobgp + alcgp, quasibinomial, e, control = tight), FALSE)
report("infert", glm(case ~ spontaneous + induced, binomial, infert, control = tight))
report("infert-cloglog", glm(case ~ spontaneous + induced, binomial("cloglog"), infert, control = tight))
report("infert-probit", glm(case ~ spontaneous + induced, binomial("probit"), infert, control = tight))
u <- c(5, 10, 15, 20, 30, 40, 60, 80, 100)
lot1 <- c(118, 58, 42, 35, 27, 25, 21, 19, 18)
report("clotting", glm(lot1 ~ log(u), Gamma("log"), control = tight))
sp <- InsectSprays
exposure <- rep(c(1, 2, 3, 0.5), 18)
report("exposure", glm(count ~ spray + offset(log(exposure)), poisson, sp, control = tight))
report("weights", glm(count ~ spray, poisson, sp, weights = exposure, control = tight))
a <- anova(glm(breaks ~ wool * tension, poisson, warpbreaks, control = tight), test = "Chisq")
for (i in 2:4) { line("warpbreaks-anova", paste0("deviance", i - 1), a$Deviance[i]); line("warpbreaks-anova", paste0("p", i - 1), a[i, 5]) }
a <- anova(glm(breaks ~ wool * tension, quasipoisson, warpbreaks, control = tight), test = "F")
for (i in 2:4) { line("warpbreaks-f", paste0("f", i - 1), a$F[i]); line("warpbreaks-f", paste0("p", i - 1), a[i, 6]) }
a <- drop1(fe, test = "Chisq")
for (i in 2:4) { line("esoph-drop", paste0("lr", i - 1), a$LRT[i]); line("esoph-drop", paste0("p", i - 1), a[i, 5]) }
# Observed information of the probit line of the beetles, by the analytic second derivative.
ld <- c(1.6907, 1.7242, 1.7552, 1.7842, 1.8113, 1.8369, 1.8610, 1.8839)
n <- c(59, 60, 62, 56, 63, 59, 62, 60)
r <- c(6, 13, 18, 28, 52, 53, 61, 60)
f <- glm(cbind(r, n - r) ~ ld, binomial("probit"), control = tight)
eta <- predict(f); P <- pnorm(eta); Q <- pnorm(-eta); d <- dnorm(eta)
w <- r * (d^2 + eta * d * P) / P^2 + (n - r) * (d^2 - eta * d * Q) / Q^2
V <- solve(crossprod(cbind(1, ld), w * cbind(1, ld)))
line("beetles-observed", "error1", sqrt(V[1, 1])); line("beetles-observed", "error2", sqrt(V[2, 2]))
# Profile limits of the slope by root finding on the profile deviance.
profile <- function(link, side) {
  f <- glm(cbind(r, n - r) ~ ld, binomial(link), control = tight)
  dev <- function(b) glm(cbind(r, n - r) ~ offset(b * ld), binomial(link), control = tight)$deviance - f$deviance - qchisq(.95, 1)
  b <- coef(f)[[2]]; s <- coef(summary(f))[2, 2]
  uniroot(dev, sort(c(b, b + side * 4 * s)), tol = 1e-12)$root
}
for (l in c("logit", "probit")) { line("beetles-profile", paste0(l, "-low"), profile(l, -1)); line("beetles-profile", paste0(l, "-high"), profile(l, 1)) }
# Penalised likelihood, by direct maximisation of log L + log|I| / 2.
penalised <- function(X, y, m, link) {
  fam <- binomial(link)
  obj <- function(b) {
    eta <- drop(X %*% b); mu <- fam$linkinv(eta)
    w <- m * fam$mu.eta(eta)^2 / (mu * (1 - mu))
    -(sum(dbinom(y, m, mu, log = TRUE)) + 0.5 * determinant(crossprod(X, w * X))$modulus)
  }
  b <- rep(0, ncol(X))
  for (k in 1:5) b <- nlm(obj, b, gradtol = 1e-12, steptol = 1e-14, iterlim = 1000)$estimate
  b
}
X <- cbind(1, rep(0:1, each = 3)); y <- c(3, 4, 5, 10, 10, 10); m <- rep(10, 6)
for (l in c("logit", "probit", "cloglog")) {
  b <- penalised(X, y, m, l)
  line("penalised", paste0(l, "1"), b[1]); line("penalised", paste0(l, "2"), b[2])
}
# Shape of the negative binomial with its standard error, by the root of its score (means do not depend on it).
shape <- function(y, mu) {
  score <- function(t) sum(digamma(y + t) - digamma(t) + log(t) + 1 - log(t + mu) - (y + t) / (mu + t))
  t <- uniroot(score, c(0.1, 200), tol = 1e-14)$root
  i <- sum(-trigamma(t + y) + trigamma(t) - 1 / t + 2 / (mu + t) - (y + t) / (mu + t)^2)
  c(t, sqrt(1 / i), sum(dnbinom(y, size = t, mu = mu, log = TRUE)))
}
for (case in c("sprays-nb", "sprays-nb-null")) {
  mu <- if (case == "sprays-nb") ave(sp$count, sp$spray) else rep(mean(sp$count), 72)
  s <- shape(sp$count, mu)
  line(case, "shape", s[1]); line(case, "shapeerror", s[2]); line(case, "loglik", s[3])
}
q <- glm(count ~ spray, quasipoisson, sp, control = tight)
report("sprays-quasi", q, FALSE)
