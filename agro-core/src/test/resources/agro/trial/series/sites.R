# Analyses over sites of the barley yields: years stand as the two blocks of each site.
# Run here: Rscript sites.R > sites.csv
d <- read.csv("barley.csv", comment.char = "#")
d$site <- factor(d$site); d$variety <- factor(d$variety); d$year <- factor(d$year)
put <- function(case, name, value) cat(sprintf("%s,%s,%.12g\n", case, name, value))
cat("# Arithmetic of combined analyses of barley.csv, years taken as blocks of the sites.\n")
cat("# Computed by base R 4.2.2 (lm, anova, aov), sites.R. Tolerance: 1e-9 relative.\n")
cat("case,name,value\n")
single <- function(case, d) {
  for (s in levels(d$site)) {
    part <- droplevels(d[d$site == s, ])
    m <- lm(yield ~ year + variety, part)
    put(case, paste("error of", s), summary(m)$sigma^2)
    put(case, paste("df of", s), m$df.residual)
    put(case, paste("F of", s), drop1(m, test = "F")["variety", "F value"])
  }
}
errors <- function(d) sapply(levels(d$site), function(s)
  summary(lm(yield ~ year + variety, d[d$site == s, ]))$sigma^2)
dfs <- function(d) sapply(levels(d$site), function(s)
  lm(yield ~ year + variety, d[d$site == s, ])$df.residual)
bartlett <- function(case, d) {
  v <- errors(d); f <- dfs(d); k <- length(v)
  pooled <- sum(f * v) / sum(f)
  c <- 1 + (sum(1 / f) - 1 / sum(f)) / (3 * (k - 1))
  x <- (sum(f) * log(pooled) - sum(f * log(v))) / c
  put(case, "bartlett", x)
  put(case, "bartlett chance", pchisq(x, k - 1, lower.tail = FALSE))
  put(case, "ratio", max(v) / min(v))
  # Plots that the model cannot miss (leverage 1) tell nothing about scatter.
  parts <- lapply(levels(d$site), function(s) {
    m <- lm(yield ~ year + variety, d[d$site == s, ])
    free <- 1 - hatvalues(m); (residuals(m) / sqrt(free))[free > 1e-10] })
  r <- unlist(parts); g <- factor(rep(levels(d$site), lengths(parts)))
  put(case, "levene", anova(lm(abs(r - ave(r, g)) ~ g))[1, "F value"])
}
fixed <- function(case, d, w = NULL) {
  d$w <- if (is.null(w)) 1 else w
  add <- lm(yield ~ site + site:year + variety, d, weights = w)
  full <- lm(yield ~ site + site:year + variety + variety:site, d, weights = w)
  none <- lm(yield ~ site + site:year, d, weights = w)
  ms <- deviance(full) / full$df.residual
  put(case, "error", ms)
  put(case, "interaction df", add$df.residual - full$df.residual)
  put(case, "interaction F", (deviance(add) - deviance(full)) / (add$df.residual - full$df.residual) / ms)
  put(case, "treatment F", (deviance(none) - deviance(add)) / (none$df.residual - add$df.residual) / ms)
}
single("whole", d); bartlett("whole", d); fixed("whole", d)
v <- errors(d)
fixed("weighted", d, 1 / v[as.character(d$site)])
a <- anova(lm(yield ~ site + site:year + variety + variety:site, d))
put("whole", "random F", a["variety", "Mean Sq"] / a["site:variety", "Mean Sq"])
put("whole", "random df", a["site:variety", "Df"])
put("whole", "random error of difference", sqrt(2 * a["site:variety", "Mean Sq"] / 12))
put("whole", "fixed error of difference", sqrt(2 * a["Residuals", "Mean Sq"] / 12))
put("whole", "variance treatment by site", (a["site:variety", "Mean Sq"] - a["Residuals", "Mean Sq"]) / 2)
# A plot, a whole variety at one site and another at two sites are missing.
lost <- (d$variety == "Trebi" & d$site == "Duluth") |
  (d$variety == "Velvet" & d$site %in% c("Morris", "Waseca")) |
  (d$variety == "Peatland" & d$site == "Crookston" & d$year == "1931")
u <- droplevels(d[!lost, ])
single("unequal", u); bartlett("unequal", u); fixed("unequal", u)
# Each site in each year is a place of its own with one value for each variety.
d$place <- factor(paste(d$site, d$year))
p <- anova(lm(yield ~ place + variety, d))
put("places", "random F", p["variety", "F value"])
put("places", "random df", p["Residuals", "Df"])
put("places", "random error of difference", sqrt(2 * p["Residuals", "Mean Sq"] / 12))
