# Half widths of t intervals over seasons, with base R's qt and sd.
# Run: Rscript interval-half-widths.R, which writes interval-half-widths.csv beside this script.
samples <- list(
  c(268.2, 279.9), c(455, 470.5, 462.1), c(301.4, 288.8, 296.0, 310.7),
  c(441, 452, 449, 460, 438, 447.5, 455.2, 450.1))
rows <- list()
for (k in samples) for (level in c(0.5, 0.8, 0.9, 0.99)) {
  s <- length(k)
  q <- qt(0.5 + level / 2, s - 1)
  rows[[length(rows) + 1]] <- data.frame(
    seasons = paste(k, collapse = " "), level, mean = mean(k), deviation = sd(k),
    halfOfMean = q * sd(k) / sqrt(s), halfOfNewSeason = q * sd(k) * sqrt(1 + 1 / s))
}
table <- do.call(rbind, rows)
writeLines(c(
  "# Half widths of the interval of a mean over seasons, and of one new season, by Student's t.",
  paste0("# Computed by ", R.version.string, " (mean, sd, qt); call: Rscript interval-half-widths.R"),
  "# Invented samples. Tolerance: 1e-9 relative.",
  paste(names(table), collapse = ",")), "interval-half-widths.csv")
write.table(format(table, digits = 15, trim = TRUE), "interval-half-widths.csv", append = TRUE, sep = ",",
  quote = FALSE, row.names = FALSE, col.names = FALSE)
