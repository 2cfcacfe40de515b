# Entries of printed tables in base R. Run in this folder:  Rscript tables.R   Writes the CSV files beside it.
version <- paste0("computed by tables.R with ", R.version.string)
put <- function(file, header, data) {
  writeLines(header, file)
  data[] <- lapply(data, function(v) if (is.numeric(v)) sprintf("%.12g", v) else v)
  suppressWarnings(write.table(data, file, append = TRUE, sep = ",", row.names = FALSE, quote = FALSE))
}
percent <- sort(unique(c(0.01, 0.02, 0.05, seq(0.1, 5, 0.1), 5:95, seq(95, 99.9, 0.1), 99.95, 99.98, 99.99)))
put("probits.csv", paste0("# Probits, qnorm(percent / 100) + 5, ", version, ". Tolerance: 1e-9."),
  data.frame(percent = percent, probit = qnorm(percent / 100) + 5))
Y <- seq(1, 9, 0.25); P <- pnorm(Y - 5); Q <- pnorm(5 - Y); Z <- dnorm(Y - 5)
put("working-probits.csv", paste0("# Y - P / Z, 1 / Z, Y + Q / Z and Z^2 / (P Q), ", version, ". Tolerance: 1e-9 relative."),
  data.frame(expected = Y, least = Y - P / Z, range = 1 / Z, most = Y + Q / Z, weight = Z^2 / (P * Q)))
critical <- expand.grid(level = c(0.1, 0.05, 0.01, 0.001), df = c(1:30, 40, 60, 120))
put("critical-values.csv", paste0("# Two-sided t, qt(1 - level / 2, df), and chi-squared, qchisq(1 - level, df), ", version, ". Tolerance: 1e-9 relative."),
  data.frame(df = critical$df, level = critical$level, t = qt(critical$level / 2, critical$df, lower.tail = FALSE),
    chi = qchisq(critical$level, critical$df, lower.tail = FALSE)))
# the sine day cut at the threshold and integrated numerically over the whole day, no closed form
z <- c(seq(-1, 1, 0.05), -0.999, -0.995, -0.254, 0.3333, 0.995, 0.999)
area <- sapply(z, function(each) { from <- asin(each)
  integrate(function(t) sin(t) - each, from, pi / 2, rel.tol = 1e-12)$value / pi })
put("sine-factors.csv", paste0("# Area above z of a sine from -1 to 1 over one day, integrated numerically, ", version, ". Tolerance: 1e-10."),
  data.frame(z = z, factor = area))
deviate <- seq(0, 3.99, 0.07)
put("normal-areas.csv", paste0("# pnorm(deviate), ", version, ". Tolerance: half a unit of the printed decimal."),
  data.frame(deviate = deviate, area = pnorm(deviate)))
