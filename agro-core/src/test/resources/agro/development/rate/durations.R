# Draws the invented records of animals.csv (with --draw) and fits Briere-1 to them by the likelihood
# of durations with base R's optim. Run: Rscript durations.R [--draw] (in this folder)
briere <- function(celsius, a, t0, tl)
  ifelse(celsius > t0 & celsius < tl, a * celsius * (celsius - t0) * sqrt(pmax(tl - celsius, 0)), 0)
if ("--draw" %in% commandArgs(TRUE)) {
  set.seed(5)
  row <- function(cabinet, set_celsius, from_days, to_days, fate)
    data.frame(cabinet, set_celsius, from_days, to_days, fate)
  rows <- NULL
  for (celsius in c(14, 17, 20, 23, 26, 29, 32)) for (cabinet in c("north", "south")) {
    median <- 1 / briere(celsius, 7e-5, 10, 35) * exp(rnorm(1, 0, 0.03))
    for (animal in 1:12) {
      days <- median * exp(rnorm(1, 0, 0.12))
      death <- rexp(1, 1 / 150)
      end <- 70
      if (days < death && days < end) {
        rows <- rbind(rows, row(cabinet, celsius, floor(days), floor(days) + 1, "developed"))
      } else if (death < end) {
        rows <- rbind(rows, row(cabinet, celsius, floor(death) + 0.5, NA, "died"))
      } else {
        rows <- rbind(rows, row(cabinet, celsius, end, NA, "alive"))
      }
    }
  }
  file <- file("animals.csv", "w")
  writeLines("# Invented records of single animals, looked at once a day; drawn by durations.R with seed 5. They prove nothing.", file)
  write.csv(rows, file, row.names = FALSE, quote = FALSE, na = "")
  close(file)
}
animals <- read.csv("animals.csv", comment.char = "#")
below <- list(
  LOG_NORMAL = function(x, s) pnorm(log(x) / s),
  GAMMA = function(x, s) pgamma(x, 1 / s^2, 1 / s^2),
  WEIBULL = function(x, s) 1 - exp(-log(2) * x^(1 / s)))
for (name in names(below)) {
  f <- below[[name]]
  loss <- function(q) {
    rate <- briere(animals$set_celsius, q[1] * 1e-5, q[2], q[3])
    s <- exp(q[4])
    to <- ifelse(is.na(animals$to_days), Inf, animals$to_days)
    chance <- f(to * rate, s) - f(animals$from_days * rate, s)
    -sum(log(pmax(chance, 1e-300)))
  }
  q <- c(7, 10, 35, log(0.15))
  for (i in 1:12) q <- optim(q, loss, control = list(maxit = 5000, reltol = 1e-15))$par
  cat(name, format(c(loss(q), q[1] * 1e-5, q[2], q[3], exp(q[4])), digits = 9), "\n")
}
