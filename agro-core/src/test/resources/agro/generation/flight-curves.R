# Standard curves of a flight, centred on the median, with base R's own distribution functions.
# Run: Rscript flight-curves.R, which writes flight-curves.csv beside this script.
# The skewed curve F(z) = 2^(-exp(-z)) is the distribution of -log(X), X exponential of rate log 2.
z <- c(-6, -3.3, -1.7, -0.8, -0.01, 0, 0.31, 1, 2.45, 5.2, 8)
rate <- log(2)
table <- rbind(
  data.frame(curve = "NORMAL", z, cumulative = pnorm(z), density = dnorm(z)),
  data.frame(curve = "LOGISTIC", z, cumulative = plogis(z), density = dlogis(z)),
  data.frame(curve = "SKEWED", z,
    cumulative = pexp(exp(-z), rate, lower.tail = FALSE),
    density = dexp(exp(-z), rate) * exp(-z)))
share <- c(0.001, 0.05, 0.2, 0.5, 0.73, 0.95, 0.999)
quantiles <- rbind(
  data.frame(curve = "NORMAL", share, quantile = qnorm(share)),
  data.frame(curve = "LOGISTIC", share, quantile = qlogis(share)),
  data.frame(curve = "SKEWED", share, quantile = -log(qexp(1 - share, rate))))
computed <- paste0("# Computed by ", R.version.string, "; call: Rscript flight-curves.R")
save <- function(file, what, table) {
  writeLines(c(what, computed, "#   pnorm, dnorm, qnorm, plogis, dlogis, qlogis, pexp, dexp, qexp",
    "# Tolerance: 1e-10 absolute.", paste(names(table), collapse = ",")), file)
  write.table(format(table, digits = 15, trim = TRUE), file, append = TRUE, sep = ",", quote = FALSE,
    row.names = FALSE, col.names = FALSE)
}
save("flight-curves.csv", "# Share of a flight that is over, and its density, z scales from the median.", table)
save("flight-curve-quantiles.csv", "# Where a share of a flight is over, in scales from the median.", quantiles)
