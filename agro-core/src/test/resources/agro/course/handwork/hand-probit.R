# Cycles of the classical probit calculation in base R. Run in this folder:  Rscript hand-probit.R   Writes cycles.csv.
# Each cycle is a weighted lm of the working deviates; glm stopped after as many iterations has to give the same line.
groups <- read.csv("groups.csv", comment.char = "#")
out <- data.frame()
for (set in unique(groups$set)) for (weights in c("WITH_NATURAL_MORTALITY", "PLAIN")) {
  all <- groups[groups$set == set, ]
  control <- all[all$dose == 0, ]
  C <- if (nrow(control) == 0) 0 else sum(control$dead) / sum(control$n)
  if (C == 0 && weights == "PLAIN") next
  g <- all[all$dose > 0, ]
  x <- log10(g$dose); n <- g$n; p <- (g$dead / n - C) / (1 - C)
  if (weights == "PLAIN") p <- pmax(0, p)
  inside <- p > 0 & p < 1
  start <- unname(coef(lm(qnorm(p[inside]) ~ x[inside])))
  # share of all deaths against the corrected curve: natural mortality in the link, or none
  K <- if (weights == "PLAIN") 0 else C
  link <- structure(list(linkfun = function(mu) qnorm((mu - K) / (1 - K)), linkinv = function(eta) K + (1 - K) * pnorm(eta),
    mu.eta = function(eta) (1 - K) * dnorm(eta), valideta = function(eta) TRUE, name = "abbott"), class = "link-glm")
  observed <- if (weights == "PLAIN") p else g$dead / n
  line <- start
  for (cycle in 1:40) {
    eta <- line[1] + line[2] * x
    P <- pnorm(eta); Q <- pnorm(-eta); Z <- dnorm(eta)
    w <- n * Z^2 / (Q * (P + K / (1 - K)))
    y <- eta + (p - P) / Z
    reg <- lm(y ~ x, weights = w)
    line <- unname(coef(reg))
    if (cycle <= 5) {
      direct <- suppressWarnings(glm.fit(cbind(1, x), observed, weights = n, start = start,
        family = quasibinomial(link = link), control = glm.control(epsilon = 1e-300, maxit = cycle)))
      stopifnot(max(abs(coef(direct) - line)) < 1e-8)
    }
    if (cycle %in% c(1, 2, 3, 40)) {
      xm <- weighted.mean(x, w); Sxx <- sum(w * (x - xm)^2); t <- qnorm(0.975)
      m <- -line[1] / line[2]; g0 <- t^2 / (line[2]^2 * Sxx)
      half <- t / (line[2] * (1 - g0)) * sqrt((1 - g0) / sum(w) + (m - xm)^2 / Sxx)
      middle <- m + g0 / (1 - g0) * (m - xm)
      out <- rbind(out, data.frame(set = set, weights = weights, cycle = cycle, start_a = start[1] + 5, start_b = start[2],
        a = line[1] + 5, b = line[2], w = sum(w), wx = sum(w * x), wy = sum(w * (y + 5)), wxx = sum(w * x^2),
        wxy = sum(w * x * (y + 5)), wyy = sum(w * (y + 5)^2), sxx = Sxx, chi = sum(w * resid(reg)^2), m = m,
        variance = (1 / sum(w) + (m - xm)^2 / Sxx) / line[2]^2, g = g0, low = middle - half, high = middle + half))
    }
  }
}
header <- c(paste0("# Cycles of the classical probit calculation from an unweighted provisional line, computed by hand-probit.R with ", R.version.string, "."),
  "# a and b in probits (normal deviate + 5) on log10 dose; limits of log LD50 with the normal deviate for 95 %. Tolerance: 1e-9 relative.")
writeLines(header, "cycles.csv")
out[sapply(out, is.numeric)] <- lapply(out[sapply(out, is.numeric)], function(v) sprintf("%.12g", v))
suppressWarnings(write.table(out, "cycles.csv", append = TRUE, sep = ",", row.names = FALSE, quote = FALSE))
