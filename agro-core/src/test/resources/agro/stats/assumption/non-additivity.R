# Writes additive-tables.csv, non-additivity.csv and largest-residuals.csv. Call: Rscript non-additivity.R
head <- function(connection, lines) writeLines(paste("#", lines), connection)
f <- function(x) sprintf("%.15g", x)
soy <- data.frame(t = rep(c("Check", "dressing A", "dressing B", "dressing C", "dressing D"), each = 5), b = rep(1:5, 5),
  y = c(8, 10, 12, 13, 11, 2, 6, 7, 11, 5, 4, 10, 9, 8, 10, 3, 5, 9, 10, 6, 9, 7, 5, 5, 3))
gap <- soy[-c(3, 14), ]
orchard <- with(OrchardSprays, data.frame(t = as.character(treatment), b = rowpos, y = decrease))
sets <- list("soybean" = soy, "soybean without two plots" = gap, "OrchardSprays by row" = orchard)
v <- file("additive-tables.csv", "w")
head(v, c("Soybean seed protectants, failures out of 100 (Snedecor & Cochran, Statistical Methods; data from",
  "  memory, sums of squares agree), the same without two plots, and OrchardSprays of R 4.2.2 (Finney 1947)",
  "  with rows as blocks. Written by non-additivity.R."))
writeLines("set,block,treatment,value", v)
n <- file("non-additivity.csv", "w")
head(n, c("Tukey's test of non-additivity: squared fitted values of the additive model added as a covariate.",
  paste("Computed by", R.version.string, "with anova(lm(y ~ block + treatment), update(., + fitted^2))."),
  "  call: Rscript non-additivity.R", "Tolerance: 1e-9 relative."))
writeLines("set,sum,remainder,df,f,p", n)
r <- file("largest-residuals.csv", "w")
head(r, c("Largest standardised residual of the additive model, its studentised value, Bonferroni p.",
  paste("Computed by", R.version.string, "with rstandard, rstudent and 2 n pt(-|t|, df - 1)."),
  "  call: Rscript non-additivity.R", "Tolerance: 1e-9 relative."))
writeLines("set,block,treatment,standardised,studentised,p,df", r)
h <- file("residuals.csv", "w")
head(h, c("Residuals and leverages of the additive model, rows as in additive-tables.csv.",
  paste("Computed by", R.version.string, "with resid and hatvalues."), "  call: Rscript non-additivity.R"))
writeLines("set,residual,leverage", h)
for (name in names(sets)) {
  d <- sets[[name]]
  writeLines(paste(name, d$b, d$t, d$y, sep = ","), v)
  m <- lm(y ~ factor(b) + t, d)
  d$sq <- fitted(m)^2
  a <- anova(m, lm(y ~ factor(b) + t + sq, d))
  writeLines(paste(name, f(a$`Sum of Sq`[2]), f(a$RSS[2]), a$Res.Df[2], f(a$F[2]), f(a$P[2]), sep = ","), n)
  i <- which.max(abs(rstandard(m)))
  p <- min(1, 2 * nrow(d) * pt(-abs(rstudent(m)[i]), m$df.residual - 1))
  writeLines(paste(name, d$b[i], d$t[i], f(rstandard(m)[i]), f(rstudent(m)[i]), f(p), m$df.residual, sep = ","), r)
  writeLines(paste(name, f(resid(m)), f(hatvalues(m)), sep = ","), h)
}
close(v); close(n); close(r); close(h)
