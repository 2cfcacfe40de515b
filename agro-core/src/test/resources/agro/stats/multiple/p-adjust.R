# Adjusted p-values with base R's own p.adjust.
# Run: Rscript p-adjust.R, which writes p-adjust.csv beside this script.
families <- list(
  spread = c(0.01, 0.013, 0.014, 0.19, 0.35, 0.5, 0.63, 0.67, 0.75, 0.81),
  unsorted = c(0.04, 0.0003, 0.9, 0.02, 0.02, 1e-12, 0.3),
  ties = c(0.03, 0.01, 0.03, 0.01, 0.03),
  ends = c(0, 1, 0.5, 1, 0),
  one = 0.04)
lines <- unlist(lapply(names(families), function(name) {
  p <- families[[name]]
  adjusted <- sapply(c("bonferroni", "holm", "hochberg", "BH"), function(m) p.adjust(p, m))
  adjusted <- matrix(adjusted, nrow = length(p))
  sprintf("%s,%.17g,%.17g,%.17g,%.17g,%.17g", name, p,
          adjusted[, 1], adjusted[, 2], adjusted[, 3], adjusted[, 4])
}))
header <- c(
  "# Adjusted p-values of five families of tests.",
  paste0("# Computed by ", R.version.string, ": p.adjust(p, method)."),
  "#   call: Rscript p-adjust.R",
  "# Tolerance: 1e-14 relative.",
  "family,p,bonferroni,holm,hochberg,benjaminiHochberg")
writeLines(c(header, lines), "p-adjust.csv")
