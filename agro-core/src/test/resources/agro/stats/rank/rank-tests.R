# Writes rank-values.csv, rank-tests.csv, rank-pairs.csv and exact-chances.csv. Call: Rscript rank-tests.R
head <- function(connection, lines) writeLines(paste("#", lines), connection)
f <- function(x) ifelse(is.na(x), "", sprintf("%.15g", x))
blocks <- function(m, treatments = colnames(m)) data.frame(
  b = rep(seq_len(nrow(m)), ncol(m)), g = rep(treatments, each = nrow(m)), y = as.vector(m))
rounding <- matrix(c(5.40, 5.50, 5.55, 5.85, 5.70, 5.75, 5.20, 5.60, 5.50, 5.55, 5.50, 5.40, 5.90, 5.85, 5.70,
  5.45, 5.55, 5.60, 5.40, 5.40, 5.35, 5.45, 5.50, 5.35, 5.25, 5.15, 5.00, 5.85, 5.80, 5.70, 5.25, 5.20, 5.10,
  5.65, 5.55, 5.45, 5.60, 5.35, 5.45, 5.05, 5.00, 4.95, 5.50, 5.50, 5.40, 5.45, 5.55, 5.50, 5.55, 5.55, 5.35,
  5.45, 5.50, 5.55, 5.50, 5.45, 5.25, 5.65, 5.60, 5.40, 5.70, 5.65, 5.55, 6.30, 6.30, 6.25), ncol = 3, byrow = TRUE,
  dimnames = list(NULL, c("Round Out", "Narrow Angle", "Wide Angle")))
stores <- matrix(c(5, 4, 7, 10, 12, 1, 3, 1, 0, 2, 16, 12, 22, 22, 35, 5, 4, 3, 5, 4, 10, 9, 7, 13, 10, 19, 18, 28,
  37, 58, 10, 7, 6, 8, 7), ncol = 5, byrow = TRUE, dimnames = list(NULL, c("A", "B", "C", "D", "E")))
clearance <- data.frame(b = NA, g = rep(c("normal", "obstructed", "asbestosis"), c(5, 4, 5)),
  y = c(2.9, 3.0, 2.5, 2.6, 3.2, 3.8, 2.7, 4.0, 2.4, 2.8, 3.4, 3.7, 2.2, 2.0))
sets <- list(
  "InsectSprays" = with(InsectSprays, data.frame(b = NA, g = spray, y = count)),
  "airquality" = with(na.omit(airquality[, c("Ozone", "Month")]), data.frame(b = NA, g = Month, y = Ozone)),
  "warpbreaks" = with(warpbreaks, data.frame(b = NA, g = tension, y = breaks)),
  "PlantGrowth" = with(PlantGrowth, data.frame(b = NA, g = group, y = weight)),
  "mucociliary clearance" = clearance,
  "rounding first base" = blocks(rounding),
  "stores" = blocks(stores),
  "OrchardSprays by row" = with(OrchardSprays, data.frame(b = rowpos, g = treatment, y = decrease)))
v <- file("rank-values.csv", "w")
head(v, c("Data sets of R 4.2.2: InsectSprays, airquality, warpbreaks, PlantGrowth, OrchardSprays (rows as blocks);",
  "  mucociliary clearance: Hollander & Wolfe 1973, Nonparametric Statistical Methods, p. 116;",
  "  rounding first base: Hollander & Wolfe 1973, p. 140; stores: Conover 1999, Practical Nonparametric",
  "  Statistics, p. 375. The last three as printed in the help pages of kruskal.test, friedman.test, quade.test.",
  "  Written by rank-tests.R."))
writeLines("set,block,group,value", v)
t <- file("rank-tests.csv", "w")
head(t, c(paste("Computed by", R.version.string), "  with kruskal.test, oneway.test, friedman.test, quade.test.",
  "  Quade of 100 times the values, whole numbers, so that equal ranges of decimals are tied.",
  "  call: Rscript rank-tests.R", "Tolerance: 1e-9 relative for the statistic, 1e-8 relative for p (chi-squared)."))
writeLines("set,test,statistic,df1,df2,p", t)
p <- file("rank-pairs.csv", "w")
head(p, c("Chances of pairwise comparisons before adjustment.", paste("Computed by", R.version.string),
  "  Conover-Iman: pairwise.t.test of the ranks; Conover after Friedman: t of lm(rank ~ treatment + block);",
  "  Dunn: pnorm of mean ranks with the variance of the ranks, var(rank).",
  "  call: Rscript rank-tests.R", "Tolerance: 1e-8 relative."))
writeLines("set,method,first,second,p", p)
for (name in names(sets)) {
  d <- sets[[name]]
  d$g <- factor(d$g, unique(d$g))
  writeLines(paste(name, ifelse(is.na(d$b), "", d$b), d$g, sprintf("%.17g", d$y), sep = ","), v)
  pairs <- combn(levels(d$g), 2)
  if (is.na(d$b[1])) {
    k <- kruskal.test(y ~ g, d)
    writeLines(paste(name, "KRUSKAL_WALLIS", f(k$statistic), f(k$parameter), "", f(k$p.value), sep = ","), t)
    w <- oneway.test(y ~ g, d)
    writeLines(paste(name, "WELCH", f(w$statistic), f(w$parameter[1]), f(w$parameter[2]), f(w$p.value), sep = ","), t)
    r <- rank(d$y)
    m <- pairwise.t.test(r, d$g, "none")$p.value
    s2 <- var(r)
    for (i in seq_len(ncol(pairs))) {
      a <- pairs[1, i]; b <- pairs[2, i]
      z <- (mean(r[d$g == b]) - mean(r[d$g == a])) / sqrt(s2 * (1 / sum(d$g == a) + 1 / sum(d$g == b)))
      writeLines(paste(name, "CONOVER_IMAN", a, b, f(m[b, a]), sep = ","), p)
      writeLines(paste(name, "DUNN", a, b, f(2 * pnorm(-abs(z))), sep = ","), p)
    }
  } else {
    k <- friedman.test(d$y, d$g, factor(d$b))
    writeLines(paste(name, "FRIEDMAN", f(k$statistic), f(k$parameter), "", f(k$p.value), sep = ","), t)
    # Hundreds of a second are whole numbers: differences of decimals would tie or not by their last bit.
    q <- quade.test(round(100 * d$y), d$g, factor(d$b))
    writeLines(paste(name, "QUADE", f(q$statistic), f(q$parameter[1]), f(q$parameter[2]), f(q$p.value), sep = ","), t)
    r <- ave(d$y, d$b, FUN = rank)
    m <- lm(r ~ g + factor(b), d)
    se <- summary(m)$sigma * sqrt(2 / length(unique(d$b)))
    for (i in seq_len(ncol(pairs))) {
      tt <- (mean(r[d$g == pairs[2, i]]) - mean(r[d$g == pairs[1, i]])) / se
      writeLines(paste(name, "CONOVER", pairs[1, i], pairs[2, i], f(2 * pt(-abs(tt), m$df.residual)), sep = ","), p)
    }
  }
}
close(v); close(t); close(p)
