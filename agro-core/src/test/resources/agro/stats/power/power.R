# Writes noncentral.csv, t-power.csv, anova-power.csv. Call: Rscript power.R
head <- function(connection, lines) writeLines(paste("#", lines), connection)
f <- function(x) sprintf("%.15g", x)
o <- file("noncentral.csv", "w")
head(o, c("Upper and lower tails of noncentral F (df1 given) and noncentral t (df1 empty).",
  paste("Computed by", R.version.string), "  by integration: of pnorm(t s - delta) over the density of s for t; of pf over dpois for F.",
  "  pt(ncp) and pf(ncp), which stop at 1e-9 and 1e-12, are given beside.",
  "  call: Rscript power.R", "Tolerance: 1e-11 absolute for the sums; 2e-9 for pt and pf."))
writeLines("df1,df2,noncentrality,value,below,above,program", o)
for (df1 in c(1, 3, 5, 20)) for (df2 in c(2, 9, 66, 400)) for (l in c(0.5, 6, 40, 300)) for (x in c(0.5, 1, 3, 8, 30)) {
  j <- 0:(l / 2 + 14 * sqrt(l / 2) + 60)
  w <- dpois(j, l / 2)
  y <- df1 * x / (df1 * x + df2)
  below <- sum(w * pbeta(y, df1 / 2 + j, df2 / 2))
  above <- sum(w * pbeta(y, df1 / 2 + j, df2 / 2, lower.tail = FALSE))
  writeLines(paste(df1, df2, l, x, f(below), f(above), f(pf(x, df1, df2, l)), sep = ","), o)
}
for (df in c(1, 2, 9, 66, 400)) for (d in c(-3, 0.3, 2, 5, 15, 30)) for (x in c(-20, -2, -0.1, 0, 0.5, 2, 5, 20, 60)) {
  density <- function(s) 2 * df * s * dchisq(df * s^2, df)
  breaks <- sort(unique(c(0, seq(0.05, 3, 0.05), 4, 6, 10, 40)))
  integral <- function(lower) sum(sapply(seq_len(length(breaks) - 1), function(i)
    integrate(function(s) pnorm(x * s - d, lower.tail = lower) * density(s), breaks[i], breaks[i + 1],
      rel.tol = 1e-12, abs.tol = 1e-15, stop.on.error = FALSE)$value))
  writeLines(paste("", df, d, x, f(integral(TRUE)), f(integral(FALSE)), f(suppressWarnings(pt(x, df, d))), sep = ","), o)
}
close(o)
o <- file("t-power.csv", "w")
head(o, c("Power and replicates of the comparison of two means.", paste("Computed by", R.version.string),
  "  with power.t.test(strict = TRUE, tol = 1e-12).", "  call: Rscript power.R",
  "Tolerance: 1e-9 for power, 1e-6 for the difference; replicates are rounded up."))
writeLines("n,difference,sd,alpha,sides,power,replicatesFor90,differenceFor80", o)
for (n in c(3, 4, 6, 10, 25)) for (d in c(0.4, 1, 2.5)) for (a in c(0.01, 0.05)) for (s in 1:2) {
  alt <- c("one.sided", "two.sided")[s]
  p <- power.t.test(n, d, 1.3, a, NULL, alternative = alt, strict = TRUE)$power
  r <- power.t.test(NULL, d, 1.3, a, 0.9, alternative = alt, strict = TRUE, tol = 1e-10)$n
  m <- power.t.test(n, NULL, 1.3, a, 0.8, alternative = alt, strict = TRUE, tol = 1e-12)$delta
  writeLines(paste(n, d, 1.3, a, s, f(p), ceiling(r), f(m), sep = ","), o)
}
close(o)
o <- file("anova-power.csv", "w")
head(o, c("Power of the F test of a one-way analysis, and replicates for power 0.9.", paste("Computed by", R.version.string),
  "  with power.anova.test.", "  call: Rscript power.R", "Tolerance: 1e-9; replicates are rounded up."))
writeLines("groups,n,between,within,alpha,power,replicatesFor90", o)
for (g in c(2, 3, 5, 8)) for (n in c(2, 4, 12)) for (b in c(0.2, 1, 4)) for (a in c(0.01, 0.05)) {
  p <- power.anova.test(g, n, b, 3, a)$power
  r <- power.anova.test(g, NULL, b, 3, a, 0.9)$n
  writeLines(paste(g, n, b, 3, a, f(p), ceiling(r), sep = ","), o)
}
close(o)
