# Profile limits of 90 % of Briere-1 fitted to "oligota" of rearings.csv, with base R. The parameter is
# held, the others are fitted by nls or optim, and uniroot finds where the sum of squares reaches
# SSE (1 + F(1, n - 3)/(n - 3)). Run: Rscript profile.R (in this folder); prints profile.csv.
data <- read.csv("rearings.csv", comment.char = "#")
data <- data[data$set == "oligota", ]
celsius <- data$celsius
rate <- 1 / as.numeric(data$days)
curve <- function(t, p) ifelse(t > p[2] & t < p[3], p[1] * 1e-5 * t * (t - p[2]) * sqrt(pmax(p[3] - t, 0)), 0)
sse <- function(p) sum((rate - curve(celsius, p))^2)
polish <- function(f, start) {
  for (i in 1:20) start <- optim(start, f, control = list(reltol = 1e-16, maxit = 5000))$par
  list(par = start, value = f(start))
}
best <- polish(sse, c(7.5, 11.4, 33.6))
limit <- best$value * (1 + qf(0.9, 1, 4) / 4)
held <- function(j, value) {
  free <- setdiff(1:3, j)
  polish(function(q) { p <- numeric(3); p[j] <- value; p[free] <- q; sse(p) }, best$par[free])$value
}
for (j in 1:3) {
  f <- function(value) held(j, value) - limit
  width <- c(6, 4, 2)[j]
  low <- uniroot(f, c(best$par[j] - width, best$par[j]), tol = 1e-8)$root
  high <- uniroot(f, c(best$par[j], best$par[j] + width), tol = 1e-8)$root
  cat(c("a", "T0", "TL")[j], format(c(low, high) * c(1e-5, 1, 1)[j], digits = 9), "\n")
}
