# Negative binomial chances by mean and size, with base R's own distribution functions.
# Run: Rscript negative-binomial.R, which writes negative-binomial.csv beside this script.
grid <- expand.grid(
  count = c(0, 1, 3, 17, 120),
  mean = c(0.02, 0.9, 12.5, 160),
  size = c(0.05, 0.7, 6, 400))
of_at_least <- function(count, mean, size) {
  # E[Y | Y >= count] by plain summation, far into the upper tail.
  last <- max(qnbinom(1e-18, mu = mean, size = size, lower.tail = FALSE), count) + 20000
  y <- count:last
  log_p <- dnbinom(y, mu = mean, size = size, log = TRUE)
  p <- exp(log_p - max(log_p))
  sum(y * p) / sum(p)
}
grid$logProbability <- dnbinom(grid$count, mu = grid$mean, size = grid$size, log = TRUE)
grid$chanceOfAtLeast <-
  pnbinom(grid$count - 1, mu = grid$mean, size = grid$size, lower.tail = FALSE)
grid$meanOfAtLeast <- mapply(of_at_least, grid$count, grid$mean, grid$size)
grid <- grid[grid$chanceOfAtLeast > 1e-200, ]
header <- c(
  "# Negative binomial by mean and size: log chance of a count, chance of at least it,",
  "#   mean of the counts that are at least it.",
  paste0("# Computed by ", R.version.string, ": dnbinom(log = TRUE), pnbinom(lower.tail = FALSE),"),
  "#   and the sum of y dnbinom(y) over y from the count on, divided by the sum of dnbinom(y).",
  "#   call: Rscript negative-binomial.R",
  "# Tolerance: 1e-9 relative.")
writeLines(c(header, paste(names(grid), collapse = ",")), "negative-binomial.csv")
write.table(format(grid, digits = 15, trim = TRUE), "negative-binomial.csv", append = TRUE, sep = ",",
  quote = FALSE, row.names = FALSE, col.names = FALSE)
