# Writes mixed-values.csv and restricted-likelihood.csv. Call: Rscript mixed-values.R
# oats: Yates 1935; yields of 6 blocks by 3 varieties (whole plots) by 4 amounts of nitrogen.
oats <- expand.grid(nitrogen = c("0.0", "0.2", "0.4", "0.6"), variety = c("Victory", "Golden Rain", "Marvellous"),
  block = paste0("b", 1:6))
oats$y <- c(111, 130, 157, 174, 117, 114, 161, 141, 105, 140, 118, 156, 61, 91, 97, 100, 70, 108, 126, 149, 96, 124,
  121, 144, 68, 64, 112, 86, 60, 102, 89, 96, 89, 129, 132, 124, 74, 89, 81, 122, 64, 103, 132, 133, 70, 89, 104, 117,
  62, 90, 100, 116, 80, 82, 94, 126, 63, 70, 109, 99, 53, 74, 118, 113, 89, 82, 86, 104, 97, 99, 119, 121)
a <- summary(aov(y ~ nitrogen * variety + Error(block / variety), oats))
stopifnot(abs(a[[2]][[1]]$F[1] - 1.48534) < 1e-4, abs(a[[3]][[1]]$F[1] - 37.68564) < 1e-4)
set <- function(name, y, group, nested, fixed, other, subject = "", time = "")
  data.frame(set = name, value = y, group = as.character(group), nested = as.character(nested),
    fixed = as.character(fixed), other = as.character(other), subject, time = as.character(time))
chicks <- subset(as.data.frame(ChickWeight), Time <= 12 & as.numeric(as.character(Chick)) %% 2 == 0)
all <- rbind(
  with(oats, set("oats", y, block, variety, nitrogen, variety)),
  with(oats[-c(3, 17, 18, 40, 66), ], set("oats with gaps", y, block, variety, nitrogen, variety)),
  with(npk, set("npk", yield, block, "", N, K)),
  with(OrchardSprays, set("OrchardSprays", decrease, rowpos, colpos, treatment, "")),
  with(subset(warpbreaks, !(seq_along(breaks) %% 7 == 3)), set("warpbreaks", breaks, tension, "", wool, "")),
  with(chicks, set("chicks", log(weight), "", "", Diet, paste0("d", Time), paste0("c", Chick), Time)))
o <- file("mixed-values.csv", "w")
writeLines(c("# oats: Yates 1935, Complex experiments, Supplement to the Journal of the Royal Statistical Society 2:181-247",
  "#   (values from memory; the strata's F ratios agree with the published 1.49 and 37.69), the same without five plots;",
  "#   npk, OrchardSprays (rows and columns), warpbreaks without every seventh row, ChickWeight (even chicks to day 12,",
  "#   logarithms) of R 4.2.2. Written by mixed-values.R."), o)
all$value <- sprintf("%.17g", all$value)
write.table(all, o, sep = ",", quote = FALSE, row.names = FALSE)
close(o)

# Restricted likelihood written out with dense matrices, maximised by nlm over logarithms of variances.
fit <- function(d, formula, groups, rho = FALSE) {
  X <- model.matrix(formula, d)
  X <- X[, qr(X)$pivot[seq_len(qr(X)$rank)], drop = FALSE]
  y <- d$y
  n <- length(y); p <- ncol(X)
  Z <- lapply(groups, function(g) outer(g, g, "=="))
  lag <- if (rho) outer(d$time, d$time, function(a, b) abs(a - b)) / 2 else NULL
  same <- if (rho) outer(d$subject, d$subject, "==") else NULL
  minus <- function(t) tryCatch(likelihood(t), error = function(problem) 1e6)
  likelihood <- function(t) {
    R <- diag(n)
    if (rho) R <- same * plogis(t[length(t)])^lag
    V <- exp(t[length(Z) + 1]) * R
    for (k in seq_along(Z)) V <- V + exp(t[k]) * Z[[k]]
    C <- chol(V); W <- backsolve(C, X, transpose = TRUE); w <- backsolve(C, y, transpose = TRUE)
    M <- crossprod(W); b <- solve(M, crossprod(W, w))
    0.5 * ((n - p) * log(2 * pi) + 2 * sum(log(diag(C))) + as.numeric(determinant(M)$modulus) + sum((w - W %*% b)^2))
  }
  start <- c(rep(log(var(resid(lm(y ~ X - 1))) / 2), length(Z) + 1), if (rho) 0.5)
  best <- NULL
  for (s in c(0, -2)) {
    m <- optim(start + s, minus, control = list(reltol = 1e-12, maxit = 5000))
    m <- nlm(minus, m$par, gradtol = 1e-10, steptol = 1e-12, iterlim = 1000)
    if (is.null(best) || m$minimum < best$minimum) best <- m
  }
  t <- best$estimate
  H <- optimHess(t, minus, control = list(ndeps = rep(1e-4, length(t))))
  se <- sqrt(diag(tryCatch(solve(H), error = function(problem) NA * H)))[seq_len(length(Z) + 1)] * exp(t[seq_len(length(Z) + 1)])
  c(-best$minimum, exp(t[seq_len(length(Z) + 1)]), if (rho) plogis(t[length(t)]), se)
}
o <- file("restricted-likelihood.csv", "w")
writeLines(c("# Restricted likelihood, variances (random terms in order, residual, then the correlation of chicks) and standard",
  "#   errors of the variances (of logarithms, by numerical differences, times the variance).",
  paste("# Computed by", R.version.string, "with dense matrices, optim and nlm."),
  "#   Factors coded so that effects sum to zero, as the constant of the likelihood depends on it.",
  "#   call: Rscript mixed-values.R",
  "# Tolerance: 1e-8 for the likelihood, 1e-4 relative for variances, 2e-3 relative for standard errors.",
  "model,logLikelihood,variances,standardErrors"), o)
options(contrasts = c("contr.sum", "contr.poly"))
write <- function(name, f, k) writeLines(paste(name, sprintf("%.12g", f[1]),
  paste(sprintf("%.10g", f[2:k]), collapse = " "), paste(sprintf("%.6g", f[-(1:k)]), collapse = " "), sep = ","), o)
for (name in c("oats", "oats with gaps", "npk", "OrchardSprays", "warpbreaks", "chicks")) {
  d <- all[all$set == name, ]
  d$y <- as.numeric(d$value)
  for (v in c("fixed", "other", "group", "nested")) d[[v]] <- factor(d[[v]], unique(d[[v]]))
  if (name == "chicks") {
    d$time <- as.numeric(d$time)
    write(name, fit(d, ~ fixed * other, list(), TRUE), 3)
    write("chicks equal correlation", fit(d, ~ fixed * other, list(d$subject)), 3)
  } else if (name == "npk") {
    write(name, fit(d, ~ fixed * other, list(d$group)), 3)
  } else if (name == "warpbreaks") {
    write(name, fit(d, ~ fixed, list(d$group)), 3)
  } else if (name == "OrchardSprays") {
    write(name, fit(d, ~ fixed, list(d$group, d$nested)), 4)
  } else {
    write(name, fit(d, ~ fixed * other, list(d$group, paste(d$group, d$nested))), 4)
  }
}
close(o)
