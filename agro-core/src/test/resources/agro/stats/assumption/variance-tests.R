# Writes group-values.csv and variance-tests.csv. Call: Rscript variance-tests.R
brown <- function(y, g, centre) {
  d <- abs(y - ave(y, g, FUN = centre))
  a <- anova(lm(d ~ g))
  list(statistic = a$F[1], df1 = a$Df[1], df2 = a$Df[2], p = a$P[1])
}
# fligner.test ranks the distances as they are rounded: two values at equal distance below and above their
# median get two ranks, at random. Here such distances are tied; whole numbers give fligner.test's own result.
fligner <- function(y, g) {
  d <- round(abs(y - ave(y, g, FUN = median)), 10)
  a <- qnorm((1 + rank(d) / (length(y) + 1)) / 2)
  a <- a - mean(a)
  s <- sum(tapply(a, g, "sum")^2 / tapply(a, g, "length")) / (sum(a^2) / (length(y) - 1))
  if (all(y == round(y))) stopifnot(all.equal(s, unname(fligner.test(y, g)$statistic)))
  list(statistic = s, parameter = nlevels(g) - 1, p.value = pchisq(s, nlevels(g) - 1, lower.tail = FALSE))
}
head <- function(connection, lines) writeLines(paste("#", lines), connection)
sets <- list(
  "InsectSprays" = with(InsectSprays, data.frame(g = spray, y = count)),
  "InsectSprays square root" = with(InsectSprays, data.frame(g = spray, y = sqrt(count))),
  "airquality Ozone by Month" = with(na.omit(airquality[, c("Ozone", "Month")]),
    data.frame(g = factor(Month), y = Ozone)),
  "warpbreaks by tension" = with(warpbreaks, data.frame(g = tension, y = breaks)),
  "OrchardSprays" = with(OrchardSprays, data.frame(g = treatment, y = decrease)),
  "PlantGrowth" = with(PlantGrowth, data.frame(g = group, y = weight)),
  "chickwts" = with(chickwts, data.frame(g = feed, y = weight)))
values <- file("group-values.csv", "w")
head(values, c("Data sets of R 4.2.2 (package datasets): InsectSprays (Beall 1942), airquality",
  "  (Chambers and others 1983), warpbreaks (Tippett 1950), OrchardSprays (Finney 1947),",
  "  PlantGrowth (Dobson 1983), chickwts (McNeil 1977). Written by variance-tests.R."))
writeLines("set,group,value", values)
tests <- file("variance-tests.csv", "w")
head(tests, c("Tests of equal variances and of normal residuals about the group means.",
  paste("Computed by", R.version.string, "with bartlett.test, fligner.test, shapiro.test, and anova"),
  "  of the distances from group means (Levene) or medians (Brown-Forsythe).",
  "  Fligner-Killeen with distances that differ by rounding alone tied (fligner.test leaves them apart:",
  "  4.31962613901405 for the square roots of InsectSprays).",
  "  call: Rscript variance-tests.R",
  "Tolerance: 1e-9 relative for the statistic, 1e-8 relative for p."))
writeLines("set,test,statistic,df1,df2,p", tests)
f <- function(x) ifelse(is.na(x), "", sprintf("%.15g", x))
for (name in names(sets)) {
  d <- sets[[name]]
  write.table(data.frame(name, d$g, sprintf("%.17g", d$y)), values, sep = ",", quote = FALSE,
    row.names = FALSE, col.names = FALSE)
  line <- function(test, s, df1, df2, p)
    writeLines(paste(name, test, f(s), f(df1), f(df2), f(p), sep = ","), tests)
  b <- bartlett.test(y ~ g, d)
  line("BARTLETT", b$statistic, b$parameter, NA, b$p.value)
  l <- brown(d$y, d$g, mean)
  line("LEVENE", l$statistic, l$df1, l$df2, l$p)
  l <- brown(d$y, d$g, median)
  line("BROWN_FORSYTHE", l$statistic, l$df1, l$df2, l$p)
  k <- fligner(d$y, d$g)
  line("FLIGNER_KILLEEN", k$statistic, k$parameter, NA, k$p.value)
  s <- shapiro.test(resid(lm(y ~ g, d)))
  line("SHAPIRO_WILK", s$statistic, NA, NA, s$p.value)
}
close(values)
close(tests)
samples <- file("shapiro-samples.csv", "w")
head(samples, c("W and p of Shapiro and Wilk for values i^a, i from 1 to n (a distribution from flat to long-tailed),",
  "  with every third value negated where sign is 1.",
  paste("Computed by", R.version.string, "with shapiro.test."), "  call: Rscript variance-tests.R",
  "Tolerance: 1e-11 absolute for W, 1e-8 relative for p (1e-12 absolute)."))
writeLines("n,power,sign,w,p", samples)
for (n in c(3, 4, 5, 6, 7, 10, 11, 12, 13, 25, 50, 199, 1000, 5000)) for (a in c(0.2, 1, 2.5)) for (sign in 0:1) {
  i <- 1:n
  x <- i^a * ifelse(sign == 1 & i %% 3 == 0, -1, 1)
  s <- shapiro.test(x)
  writeLines(paste(n, a, sign, f(s$statistic), f(s$p.value), sep = ","), samples)
}
close(samples)
q <- file("normal-quantiles.csv", "w")
head(q, c("Quantiles of the standard normal distribution.",
  paste("Computed by", R.version.string, "with qnorm."), "  call: Rscript variance-tests.R",
  "Tolerance: 1e-14 relative (1e-15 absolute)."))
writeLines("p,z", q)
for (p in c(1e-300, 1e-100, 1e-20, 1e-12, 1e-5, 0.001, 0.025, 0.0749, 0.0751, 0.3, 0.5, 0.6, 0.92, 0.975, 0.999999))
  writeLines(sprintf("%.17g,%.17g", p, qnorm(p)), q)
close(q)
