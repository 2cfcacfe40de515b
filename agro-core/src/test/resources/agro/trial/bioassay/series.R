# Several series in base R. Run in this folder:  Rscript series.R   Writes series.csv.
g <- read.csv("poisons.csv", comment.char = "#"); g$s <- factor(g$series, levels = c("rotenone", "deguelin", "mixture")); g$x <- log10(g$dose)
rows <- c(); add <- function(set, name, v) rows <<- c(rows, sprintf("%s,%s,%.10g", set, name, v))
control <- glm.control(epsilon = 1e-15, maxit = 200)
run <- function(f, d = g) glm(f, family = binomial("probit"), data = d, control = control)
one <- run(cbind(responded, n - responded) ~ x); par <- run(cbind(responded, n - responded) ~ s + x - 1); sep <- run(cbind(responded, n - responded) ~ s + s:x - 1)
X2 <- function(m) sum(residuals(m, "pearson")^2)
for (k in c("ONE_LINE", "PARALLEL", "SEPARATE")) { m <- list(ONE_LINE = one, PARALLEL = par, SEPARATE = sep)[[k]]
  add("poisons", paste0("deviance_", k), deviance(m)); add("poisons", paste0("pearson_", k), X2(m)); add("poisons", paste0("df_", k), df.residual(m)) }
h <- X2(sep) / df.residual(sep)
for (k in c("parallelism", "equality")) { f <- if (k == "parallelism") par else one; d <- deviance(f) - deviance(sep); q <- df.residual(f) - df.residual(sep)
  add("poisons", paste0(k, "_chi"), d); add("poisons", paste0(k, "_chi_p"), pchisq(d, q, lower.tail = FALSE))
  add("poisons", paste0(k, "_f"), d / q / h); add("poisons", paste0(k, "_f_p"), pf(d / q / h, q, df.residual(sep), lower.tail = FALSE)) }
V <- vcov(par); b <- coef(par)[["x"]]
fieller <- function(m, d, mm, md, dd, t) { A <- d^2 - t^2 * dd; B <- m * d - t^2 * md; C <- m^2 - t^2 * mm; sort((B + c(-1, 1) * sqrt(B^2 - A * C)) / A) }
for (s in c("deguelin", "mixture")) { j <- paste0("s", s); r <- "srotenone"
  m <- coef(par)[[j]] - coef(par)[[r]]; mm <- V[j, j] + V[r, r] - 2 * V[j, r]; md <- V[j, "x"] - V[r, "x"]
  add("poisons", paste0("potency_", s), 10^(m / b))
  z <- 10^fieller(m, b, mm, md, V["x", "x"], qnorm(.975)); add("poisons", paste0("potency_low_", s), z[1]); add("poisons", paste0("potency_high_", s), z[2])
  hp <- X2(par) / df.residual(par); z <- 10^fieller(m, b, hp * mm, hp * md, hp * V["x", "x"], qt(.975, df.residual(par)))
  add("poisons", paste0("potency_scatter_low_", s), z[1]); add("poisons", paste0("potency_scatter_high_", s), z[2]) }
place <- function(s, p) { m <- run(cbind(responded, n - responded) ~ x, g[g$s == s, ]); v <- vcov(m); t <- (qnorm(p) - coef(m)[1]) / coef(m)[2]
  c(t, sqrt(v[1, 1] + 2 * t * v[1, 2] + t^2 * v[2, 2]) / coef(m)[2]) }
for (p in c(50, 90)) for (s in c("deguelin", "mixture")) { u <- place(s, p / 100); w <- place("rotenone", p / 100); e <- sqrt(u[2]^2 + w[2]^2)
  add("poisons", paste0("ratio", p, "_", s), 10^(u[1] - w[1])); add("poisons", paste0("ratio", p, "_low_", s), 10^(u[1] - w[1] - qnorm(.975) * e)); add("poisons", paste0("ratio", p, "_high_", s), 10^(u[1] - w[1] + qnorm(.975) * e)) }
# two assays with controls of their own: natural mortality for each, lines parallel or separate
a <- read.csv("groups.csv", comment.char = "#"); a <- a[a$set %in% c("pixley", "bugres"), ]; k <- ifelse(a$set == "pixley", 1, 2); x <- ifelse(a$dose > 0, log10(a$dose), 0)
ll <- function(A, B, C) sum(dbinom(a$responded, a$n, C[k] + (1 - C[k]) * ifelse(a$dose > 0, pnorm(A[k] + B[k] * x), 0), log = TRUE))
best <- function(f, t) { for (i in 1:20) t <- optim(t, f, control = list(maxit = 5000, reltol = 1e-16))$par; nlm(f, t, gradtol = 1e-12, steptol = 1e-12, iterlim = 1000) }
m0 <- best(function(t) -ll(t[1:2], t[c(3, 3)], plogis(t[4:5])), c(-3, -2.5, 2.2, -4, -3))
m1 <- best(function(t) -ll(t[1:2], t[3:4], plogis(t[5:6])), c(-3.5, -2, 2.9, 1.5, -4, -3))
add("controls", "parallelism_chi", 2 * (m0$minimum - m1$minimum)); add("controls", "slope", m0$estimate[3])
# rotenone alone by profile likelihood: doses at which twice the log-likelihood has fallen by qchisq(.95, 1)
d <- g[g$series == "rotenone", ]
prof <- function(t) { f <- function(b) -2 * sum(dbinom(d$responded, d$n, pnorm(b * (d$x - t)), log = TRUE)); optimize(f, c(0.5, 12), tol = 1e-12)$objective }
m <- run(cbind(responded, n - responded) ~ x, d); t0 <- -coef(m)[1] / coef(m)[2]; least <- prof(t0)
for (w in c("low", "high")) add("profile", w, 10^uniroot(function(t) prof(t) - least - qchisq(.95, 1), if (w == "low") c(t0 - .2, t0) else c(t0, t0 + .2), tol = 1e-12)$root)
writeLines(c(paste0("# Several series, computed by series.R with ", R.version.string, ". Tolerance: 1e-6 relative."), "set,quantity,value", rows), "series.csv")
