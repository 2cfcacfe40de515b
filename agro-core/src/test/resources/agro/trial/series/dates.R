# Repeated measures of data sets of base R. Run here: Rscript dates.R > dates.csv
cat("# Split plot in time with epsilons, computed by base R 4.2.2 (aov, anova.mlm, mauchly.test), dates.R.\n")
cat("# CO2 (Potvin, Lechowicz & Tardif 1990, Ecology 71:1389-1400): plants as plots, concentrations as dates.\n")
cat("# ChickWeight (Crowder & Hand 1990, Analysis of Repeated Measures): chicks seen on days 0, 4 to 20.\n")
cat("# Tolerance: 1e-8 relative.\n")
cat("case,name,value\n")
put <- function(case, name, value) cat(sprintf("%s,%s,%.12g\n", case, name, value))
run <- function(case, d, block) {
  f <- if (block) y ~ b * t + g * t + Error(s) else y ~ g * t + Error(s)
  a <- summary(aov(f, d))
  plots <- a[[1]][[1]]; within <- a[[2]][[1]]
  rownames(plots) <- trimws(rownames(plots)); rownames(within) <- trimws(rownames(within))
  product <- if ("t:g" %in% rownames(within)) "t:g" else "g:t"
  put(case, "treatment F", plots["g", "F value"])
  put(case, "date F", within["t", "F value"])
  put(case, "product F", within[product, "F value"])
  put(case, "product df", within[product, "Df"])
  put(case, "within df", within["Residuals", "Df"])
  w <- reshape(d, idvar = c("s", "g", "b"), timevar = "t", direction = "wide")
  y <- as.matrix(w[, grep("^y[.]", names(w))])
  big <- if (block) lm(y ~ b + g, w) else lm(y ~ g, w)
  small <- if (block) lm(y ~ b, w) else lm(y ~ 1, w)
  m <- anova(big, small, X = ~1, test = "Spherical")
  e <- stats:::sphericity(SSD(big), X = ~1)
  put(case, "gg", e$GG.eps); put(case, "hf", e$HF.eps)
  put(case, "gg chance", m[2, "G-G Pr"]); put(case, "hf chance", m[2, "H-F Pr"])
  # mauchly.test of R 4.2.2 takes the number of dates instead of that of the contrasts in one factor
  # of its second term (3 * p + 2); here the chance has the contrasts throughout (Anderson 1958).
  q <- mauchly.test(big, X = ~1)
  put(case, "mauchly", q$statistic)
  n <- big$df.residual; p <- ncol(y) - 1
  rho <- 1 - (2 * p^2 + p + 2) / (6 * p * n)
  w2 <- (p + 2) * (p - 1) * (p - 2) * (2 * p^3 + 6 * p^2 + 3 * p + 2) / (288 * (n * p * rho)^2)
  z <- -n * rho * log(q$statistic); f <- p * (p + 1) / 2 - 1
  first <- pchisq(z, f, lower.tail = FALSE); second <- pchisq(z, f + 4, lower.tail = FALSE)
  put(case, "mauchly chance", first + w2 * (second - first))
}
co2 <- data.frame(s = factor(as.character(CO2$Plant)), g = interaction(CO2$Type, CO2$Treatment),
  b = CO2$Type, t = factor(CO2$conc), y = CO2$uptake)
run("co2", co2, FALSE)
co2$g <- CO2$Treatment
run("co2 in blocks", co2, TRUE)
days <- c(0, 4, 8, 12, 16, 20)
k <- ChickWeight[ChickWeight$Time %in% days, ]
whole <- names(which(table(k$Chick) == length(days)))
k <- k[k$Chick %in% whole, ]
run("chicks", data.frame(s = factor(as.character(k$Chick)), g = k$Diet, b = 1, t = factor(k$Time),
  y = k$weight), FALSE)
