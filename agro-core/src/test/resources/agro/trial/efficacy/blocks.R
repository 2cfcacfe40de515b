# Efficacy over blocks by the delta method, for blocks.csv. Rscript blocks.R > blocks.csv
# Rows: densities before and after on treated and control in five blocks (invented numbers).
tb <- c(31, 52, 18, 40, 27); ta <- c(4, 9, 1, 5, 6); cb <- c(29, 60, 22, 35, 30); ca <- c(33, 71, 19, 48, 36)
cat("# Efficacy over blocks, invented counts, by base R", paste(R.version$major, R.version$minor, sep = "."), "(blocks.R):\n")
cat("# delta method on the log of the ratio of sums with Student's t on blocks - 1 degrees of freedom; mean of blocks with Student's t;\n")
cat("# plots without blocks: two samples with the degrees of freedom of Satterthwaite. Counts stand in blocks.R and in the test.\n")
cat("# Tolerance: relative 1e-9.\n")
cat("case,percent,standard_error,low,high\n")
out <- function(name, ratio, se, df) {
  q <- qt(0.975, df)
  cat(sprintf("%s,%.12g,%.12g,%.12g,%.12g\n", name, 100 * (1 - ratio), 100 * ratio * se,
              100 * (1 - ratio * exp(q * se)), 100 * (1 - ratio * exp(-q * se))))
}
b <- length(tb)
u <- ta / mean(ta) - tb / mean(tb) + cb / mean(cb) - ca / mean(ca)
out("henderson_tilton pooled", sum(ta) * sum(cb) / (sum(tb) * sum(ca)), sd(u) / sqrt(b), b - 1)
u <- ta / mean(ta) - ca / mean(ca)
out("abbott pooled", sum(ta) / sum(ca), sd(u) / sqrt(b), b - 1)
mean_of <- function(name, e) {
  test <- t.test(e)
  cat(sprintf("%s,%.12g,%.12g,%.12g,%.12g\n", name, mean(e), sd(e) / sqrt(b), test$conf.int[1], test$conf.int[2]))
}
mean_of("henderson_tilton mean", 100 * (1 - ta * cb / (tb * ca)))
mean_of("abbott mean", 100 * (1 - ta / ca))
vt <- var(ta / mean(ta)) / b
vc <- var(ca / mean(ca)) / b
out("abbott without blocks", sum(ta) / sum(ca), sqrt(vt + vc), (vt + vc)^2 / (vt^2 / (b - 1) + vc^2 / (b - 1)))
