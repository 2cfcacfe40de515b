# Biweight mean and standard deviation after Lanzante (1996), written from the formulas with base R.
# Rscript biweight.R > biweight.csv
biweight <- function(x, censor = 7.5) {
  m <- median(x)
  u <- (x - m) / (censor * mad(x, constant = 1))
  keep <- abs(u) < 1
  w <- (1 - u[keep]^2)^2
  centre <- m + sum((x[keep] - m) * w) / sum(w)
  spread <- sqrt(length(x) * sum((x[keep] - m)^2 * (1 - u[keep]^2)^4)) /
    abs(sum((1 - u[keep]^2) * (1 - 5 * u[keep]^2)))
  c(centre, spread)
}
set.seed(11)
cat("# Biweight mean and standard deviation, censor 7.5 (Lanzante 1996, formulas from memory).\n")
cat("# Values invented by R's generator, seed 11; computed by biweight.R, base R",
    as.character(getRversion()), ".\n")
cat("# Tolerance 1e-9. Values separated by blanks.\n")
cat("values,mean,sd\n")
samples <- list(
  round(rnorm(31, 18, 4), 1),
  c(round(rnorm(31, 18, 4), 1), 56, 56, -40),
  round(rt(60, 3) * 2 + 5, 1),
  c(1, 2, 3, 4, 100),
  round(rexp(45, 0.2), 1)
)
for (x in samples) {
  r <- biweight(x)
  cat(paste(x, collapse = " "), ",", sprintf("%.12f,%.12f\n", r[1], r[2]), sep = "")
}
