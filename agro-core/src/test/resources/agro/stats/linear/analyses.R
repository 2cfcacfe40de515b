# Analyses of variance of data sets of base R and of the two tables beside this script, by base R's lm and aov.
# Type II: residual sums of squares of nested fits, without the terms that contain the tested one.
# Type III: columns of one term left out of the model matrix with contr.sum. F is over the full model's error.
# Run: Rscript analyses.R, which writes the data sets, analyses.csv, strata.csv and means.csv beside it.
options(contrasts = c("contr.sum", "contr.poly"), digits = 15)
version <- paste0("# Computed by ", R.version.string, "; call: Rscript analyses.R")
put <- function(data, file, title) {
  writeLines(c(title, paste(names(data), collapse = ",")), file)
  write.table(data, file, append = TRUE, sep = ",", quote = FALSE, row.names = FALSE, col.names = FALSE)
}
put(InsectSprays, "insect-sprays.csv",
  "# Insects on units treated with six sprays. Beall 1942, Biometrika 32:243-262; base R, InsectSprays.")
put(npk, "npk.csv",
  "# Peas; N, P, K in blocks of 4. Yates 1937; Venables & Ripley, Modern Applied Statistics; base R, npk.")
put(warpbreaks, "warpbreaks.csv", "# Warp breaks per loom. Tippett 1950; Tukey 1977; base R, warpbreaks.")
put(OrchardSprays[c("rowpos", "colpos", "treatment", "decrease")], "orchard-sprays.csv",
  "# Latin square of 8. Finney, Probit Analysis; McNeil 1977; base R, OrchardSprays.")
put(ToothGrowth, "tooth-growth.csv", "# Tooth growth of guinea pigs. Crampton 1947; base R, ToothGrowth.")
put(as.data.frame(CO2), "carbon-dioxide.csv",
  "# Carbon dioxide uptake of 12 plants at 7 concentrations. Potvin et al. 1990, Ecology 71:1389; base R, CO2.")
oats <- read.csv("yates-oats.csv", comment.char = "#", stringsAsFactors = TRUE)
oats$nitrogen <- factor(oats$nitrogen)
soybean <- read.csv("soybean.csv", comment.char = "#")
soybean$block <- factor(soybean$block)
soybean$treatment <- factor(soybean$treatment, c("check", "first", "second", "third", "fourth"))
tooth <- transform(ToothGrowth, dose = factor(dose))
orchard <- transform(OrchardSprays, rowpos = factor(rowpos), colpos = factor(colpos))
co2 <- as.data.frame(CO2)
co2$Plant <- factor(as.character(co2$Plant))

rows <- list()
add <- function(case, kind, omitted, term, df, ss, f, p)
  rows[[length(rows) + 1]] <<- data.frame(case, kind, omitted = paste(omitted, collapse = " "), term, df, ss, f, p)
analyse <- function(case, formula, data, omitted = integer(0), kinds = 1:3) {
  d <- droplevels(if (length(omitted)) data[-omitted, ] else data)
  full <- lm(formula, d)
  rss <- deviance(full); df <- df.residual(full); ms <- rss / df
  labels <- attr(terms(formula), "term.labels")
  sets <- strsplit(labels, ":", fixed = TRUE)
  y <- model.response(model.frame(full)); x <- model.matrix(full); owner <- attr(x, "assign")
  for (kind in kinds) {
    sequential <- anova(full)
    for (k in seq_along(labels)) {
      if (kind == 1) {
        if (!(labels[k] %in% rownames(sequential))) next
        ss <- sequential[labels[k], "Sum Sq"]; n <- sequential[labels[k], "Df"]
      } else {
        keep <- if (kind == 2) which(!sapply(sets, function(s) length(s) > length(sets[[k]]) && all(sets[[k]] %in% s)))
          else seq_along(labels)
        big <- lm.fit(x[, owner %in% c(0, keep), drop = FALSE], y)
        small <- lm.fit(x[, owner %in% c(0, setdiff(keep, k)), drop = FALSE], y)
        ss <- sum(small$residuals^2) - sum(big$residuals^2); n <- big$rank - small$rank
      }
      f <- if (n > 0) ss / n / ms else NA
      add(case, c("SEQUENTIAL", "HIERARCHICAL", "MARGINAL")[kind], omitted, labels[k], n, ss, f,
        if (n > 0) pf(f, n, df, lower.tail = FALSE) else NA)
    }
  }
  add(case, "RESIDUAL", omitted, "residual", df, rss, NA, NA)
}
analyse("sprays", count ~ spray, InsectSprays)
analyse("sprays root", sqrt(count) ~ spray, InsectSprays, kinds = 1)
analyse("sprays root half", sqrt(count + 0.5) ~ spray, InsectSprays, kinds = 1)
analyse("sprays log", log(count + 1) ~ spray, InsectSprays, kinds = 1)
analyse("sprays unequal", count ~ spray, InsectSprays, c(1, 2, 3, 14, 30, 31, 70))
analyse("npk", yield ~ block + N * P * K, npk, kinds = 1:2)
analyse("npk main", yield ~ block + N + K, npk)
analyse("npk missing", yield ~ block + N * P + N * K + P * K, npk, c(3, 17))
analyse("warp", breaks ~ wool * tension, warpbreaks)
analyse("warp unequal", breaks ~ wool * tension, warpbreaks, c(1, 2, 3, 11, 28, 29, 40, 41, 42, 50))
analyse("warp empty", breaks ~ wool * tension, warpbreaks, 46:54, kinds = 1:2)
analyse("orchard", decrease ~ rowpos + colpos + treatment, orchard)
analyse("orchard missing", decrease ~ rowpos + colpos + treatment, orchard, c(1, 20))
analyse("tooth unequal", len ~ supp * dose, tooth, c(1, 2, 3, 4, 15, 16, 31, 47, 48, 49))
analyse("soybean", failures ~ block + treatment, soybean)
analyse("soybean missing", failures ~ block + treatment, soybean, 8)
analyse("oats unequal", yield ~ block + variety * nitrogen, oats, c(1, 10, 11, 30, 44, 71))
analyse("uptake", uptake ~ conc + Type * Treatment + conc:Type, co2, c(1, 2, 30, 84))
write <- function(table, file, title) {
  writeLines(c(title, version, "# Tolerance: 1e-9 relative.", paste(names(table), collapse = ",")), file)
  write.table(format(table, digits = 15, trim = TRUE), file, append = TRUE, sep = ",", quote = FALSE,
    row.names = FALSE, col.names = FALSE)
}
table <- do.call(rbind, rows)
for (column in c("ss", "f", "p")) table[[column]] <- formatC(table[[column]], digits = 15, format = "g", width = 1)
write(table, "analyses.csv",
  "# Sums of squares of three kinds; omitted: places from 1 of rows of the data set that are left out.")

strata <- list()
layers <- function(case, formula, data) {
  for (name in names(s <- summary(aov(formula, data)))) {
    table <- s[[name]][[1]]
    for (k in seq_len(nrow(table))) strata[[length(strata) + 1]] <<- data.frame(case,
      stratum = sub("Error: ", "", name), term = trimws(rownames(table)[k]), df = table[k, "Df"],
      ss = table[k, "Sum Sq"], f = if (is.null(table$F)) NA else table[k, "F value"],
      p = if (is.null(table$F)) NA else table[k, "Pr(>F)"])
  }
}
layers("oats", yield ~ variety * nitrogen + Error(block / variety), oats)
layers("oats as strips", yield ~ variety * nitrogen + Error(block / (variety + nitrogen)), oats)
layers("npk", yield ~ N * P * K + Error(block), npk)
layers("orchard", decrease ~ treatment + Error(rowpos + colpos), orchard)
layers("soybean", failures ~ treatment + Error(block), soybean)
layers("uptake", uptake ~ Type * Treatment * factor(conc) + Error(Plant), co2)
table <- do.call(rbind, strata)
for (column in c("ss", "f", "p")) table[[column]] <- formatC(table[[column]], digits = 15, format = "g", width = 1)
write(table, "strata.csv", "# Analyses of variance by strata, aov with Error().")

# Least-squares means: averages of fitted cells with equal weights; variances of their differences.
means <- list()
marginal <- function(case, formula, data, omitted, factor) {
  d <- droplevels(if (length(omitted)) data[-omitted, ] else data)
  fit <- lm(formula, d)
  variables <- setdiff(all.vars(formula), all.vars(formula)[1])
  grid <- do.call(expand.grid, lapply(d[variables], function(v) if (is.factor(v)) levels(v) else mean(v)))
  x <- model.matrix(delete.response(terms(fit)), grid, xlev = fit$xlevels)
  l <- t(sapply(levels(d[[factor]]), function(v) colMeans(x[grid[[factor]] == v, , drop = FALSE])))
  estimate <- l %*% coef(fit)
  for (i in seq_len(nrow(l))) {
    difference <- l[i, ] - l[1, ]
    means[[length(means) + 1]] <<- data.frame(case, omitted = paste(omitted, collapse = " "), factor,
      level = rownames(l)[i], mean = estimate[i], se = sqrt(drop(l[i, ] %*% vcov(fit) %*% l[i, ])),
      seOfDifferenceToFirst = sqrt(drop(difference %*% vcov(fit) %*% difference)))
  }
}
marginal("warp unequal", breaks ~ wool * tension, warpbreaks, c(1, 2, 3, 11, 28, 29, 40, 41, 42, 50), "tension")
marginal("warp unequal", breaks ~ wool * tension, warpbreaks, c(1, 2, 3, 11, 28, 29, 40, 41, 42, 50), "wool")
marginal("soybean missing", failures ~ block + treatment, soybean, 8, "treatment")
marginal("orchard missing", decrease ~ rowpos + colpos + treatment, orchard, c(1, 20), "treatment")
marginal("oats unequal", yield ~ block + variety * nitrogen, oats, c(1, 10, 11, 30, 44, 71), "nitrogen")
marginal("uptake", uptake ~ conc + Type * Treatment + conc:Type, co2, c(1, 2, 30, 84), "Type")
table <- do.call(rbind, means)
for (column in c("mean", "se", "seOfDifferenceToFirst"))
  table[[column]] <- formatC(table[[column]], digits = 15, format = "g", width = 1)
write(table, "means.csv", "# Least-squares means with equal weights, standard errors, and those of differences to the first level.")
