# Power of the comparison of two treatments, level 0.05, by the noncentral t distribution.
# Rscript power-of-blocks.R > power-of-blocks.csv
power <- function(design, t, r, difference, cv, sides) {
  df <- switch(design, blocks = (t - 1) * (r - 1), free = t * (r - 1))
  ncp <- difference / (cv * sqrt(2 / r))
  q <- qt(1 - 0.05 / sides, df)
  p <- pt(q, df, ncp, lower.tail = FALSE)
  if (sides == 2) p + pt(-q, df, ncp) else p
}
cat("# Power of the comparison of two treatments at the level 0.05 with r replicates.\n")
cat("# Computed with base", R.version.string, "by pt with ncp; script beside this file.\n")
cat("# difference and cv in per cent of the mean; tolerance 1e-9 absolute\n")
cat("design,treatments,replicates,difference,cv,sides,power\n")
for (design in c("blocks", "free")) for (t in c(4, 6)) for (r in c(2, 4, 8, 12))
  for (sides in 1:2) for (d in c(30, 50))
    cat(design, t, r, d, 25, sides, format(power(design, t, r, d, 25, sides), digits = 15),
        sep = ",", fill = TRUE)
