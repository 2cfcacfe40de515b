# Two invented seasons with two flights each, fitted by base R's optim() with the likelihood written
# out again from its definition, as an outside check of the fit.
# Run: Rscript two-seasons-fit.R, which writes two-seasons-visits.csv and two-seasons-fit.csv.
#
# Mean of a visit: traps open x sum over flights of N [F((b - mu - (g-1) K)/s_g) - F((a - ...)/s_g)]
#   + 0.01 x nights open, with s_g^2 = s1^2 + (g-1) s2^2; counts negative binomial, size r per night
#   open; a full trap counts as "this many or more".
# Weak priors: log s1 ~ N(log(0.12 K0), 1), log(s2/s1) ~ N(0, 1), log N ~ N(log((C/t + 1)/G), 3)
#   with the season's catch C and its mean t of traps open.
seed <- 27182
set.seed(seed, kind = "Mersenne-Twister", normal.kind = "Inversion", sample.kind = "Rejection")
k0 <- 450
true <- list(mu = c(150, 171), k = 470, s1 = 38, s2 = 33, n = rbind(c(70, 130), c(45, 110)), r = 0.9)

visits <- do.call(rbind, lapply(1:2, function(s) {
  nights <- sample(3:5, 34, replace = TRUE)
  daily <- pmax(0.5, 1.5 + 0.085 * cumsum(nights) + rnorm(34, 0, 1.2))
  to <- 40 + cumsum(nights * pmin(daily, 11))
  data.frame(season = s, nights, from = c(40, head(to, -1)), to)
}))
visits$open <- visits$nights
visits$open[c(9, 50)] <- visits$open[c(9, 50)] - 1
flights <- function(v, mu, k, s1, s2, n) {
  total <- 0.01 * v$open
  for (g in 1:2) {
    s <- sqrt(s1^2 + (g - 1) * s2^2)
    m <- mu[v$season] + (g - 1) * k
    total <- total + v$open / v$nights * n[cbind(v$season, g)] *
      (pnorm((v$to - m) / s) - pnorm((v$from - m) / s))
  }
  total
}
mean_true <- with(true, flights(visits, mu, k, s1, s2, n))
visits$count <- rnbinom(nrow(visits), mu = mean_true, size = true$r * visits$open)
best <- which.max(visits$count * (visits$season == 2))
visits$full <- seq_len(nrow(visits)) == best
visits$count[best] <- floor(0.7 * visits$count[best])

open <- tapply(visits$open / visits$nights, visits$season, mean)
caught <- tapply(visits$count, visits$season, sum)
log_catch <- log((caught / open + 1) / 2)
# Order: mu 1, mu 2, K, log s1, log s2, log N (season 1: flights 1, 2; season 2: flights 1, 2), log r.
parts <- function(p) {
  n <- matrix(exp(p[6:9]), 2, 2, byrow = TRUE)
  m <- flights(visits, p[1:2], p[3], exp(p[4]), exp(p[5]), n)
  size <- exp(p[10]) * visits$open
  likelihood <- sum(ifelse(visits$full,
    pnbinom(visits$count - 1, mu = m, size = size, lower.tail = FALSE, log.p = TRUE),
    dnbinom(visits$count, mu = m, size = size, log = TRUE)))
  prior <- -0.5 * ((p[4] - log(0.12 * k0))^2 + (p[5] - p[4])^2 +
    sum(((p[6:9] - rep(log_catch, each = 2)) / 3)^2))
  c(likelihood = likelihood, penalised = likelihood + prior)
}
target <- function(p) -parts(p)[["penalised"]]
start <- c(160, 160, 460, log(50), log(50), rep(log_catch, each = 2), 0)
fit <- optim(start, target, method = "Nelder-Mead",
  control = list(maxit = 60000, reltol = 1e-14, parscale = c(20, 20, 20, rep(0.5, 7))))
for (again in 1:6) {
  fit <- optim(fit$par, target, method = "BFGS",
    control = list(maxit = 5000, reltol = 1e-15, parscale = c(20, 20, 20, rep(0.5, 7))))
  fit <- optim(fit$par, target, method = "Nelder-Mead",
    control = list(maxit = 60000, reltol = 1e-15, parscale = c(2, 2, 2, rep(0.05, 7))))
}
header <- function(what) c(what,
  paste0("# Invented data. Computed by ", R.version.string, ", optim() by Nelder-Mead and BFGS in turn;"),
  paste0("#   call: Rscript two-seasons-fit.R; seed ", seed))
writeLines(c(header("# Two invented seasons of visits: degree-days at both ends, nights, nights open, count."),
  "season,nights,from,to,open,count,full"), "two-seasons-visits.csv")
v <- visits[, c("season", "nights", "from", "to", "open", "count", "full")]
v$from <- sprintf("%.17g", v$from)
v$to <- sprintf("%.17g", v$to)
write.table(v, "two-seasons-visits.csv", append = TRUE, sep = ",", quote = FALSE,
  row.names = FALSE, col.names = FALSE)
names <- c("start 1", "start 2", "interval", "log first scale", "log added scale",
  "log catch 1.1", "log catch 1.2", "log catch 2.1", "log catch 2.2", "log size",
  "log likelihood", "penalised log likelihood")
writeLines(c(header("# Optimum of the penalised likelihood of two-seasons-visits.csv."),
  "# Tolerance: penalised log likelihood 1e-4 below at most, interval and starts 0.05 degC.d.",
  "name,value", paste(names, sprintf("%.12g", c(fit$par, parts(fit$par))), sep = ",")),
  "two-seasons-fit.csv")
