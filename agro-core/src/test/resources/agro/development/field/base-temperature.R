# Base temperatures by direct search. Run in this folder:  Rscript base-temperature.R
d <- c(40, 32, 27, 22, 19); t <- c(14, 16, 18, 20.5, 22.5)
g <- function(x) d * (t - x)
least <- function(f) optimize(f, c(0, 13), tol = 1e-12)$minimum
rma <- function() { y <- d * t; s <- prcomp(cbind(scale(d), scale(y)))$rotation[, 1]
  s[2] / s[1] * sd(y) / sd(d) }
base <- c(
  LEAST_SD_DEGREE_DAYS = least(function(x) sd(g(x))),
  LEAST_SD_DAYS = least(function(x) sd(g(x)) / (mean(t) - x)),
  LEAST_VARIATION = least(function(x) sd(g(x)) / mean(g(x))),
  NO_SLOPE_ON_TEMPERATURE = uniroot(function(x) coef(lm(g(x) ~ t))[2], c(0, 13), tol = 1e-13)$root,
  RATE_INTERCEPT = { f <- coef(lm(I(1 / d) ~ t)); -f[[1]] / f[[2]] },
  REDUCED_MAJOR_AXIS = rma())
lines <- readLines("base-temperature.csv", encoding = "UTF-8")
head <- lines[seq_len(grep("^criterion", lines))]
rows <- sapply(names(base), function(n) { x <- base[[n]]; v <- g(x)
  sprintf("%s,%.8f,%.8f,%.8f,%.8f,%.8f", n, x, mean(v), sd(v), sd(v) / (mean(t) - x), 100 * sd(v) / mean(v)) })
writeLines(c(head, rows), "base-temperature.csv")
