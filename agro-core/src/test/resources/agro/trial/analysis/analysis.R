# Values for analysis.csv. Rscript analysis.R > analysis.csv
cat("# Analyses of trials with R's lm, aov, glm and kruskal.test.\n")
cat("# Computed with", R.version.string, "by analysis.R beside this file.\n")
cat("# Data: InsectSprays (Beall 1942, Biometrika 32:243-262), npk (Yates 1937) of base R; soybean seed (Snedecor and\n")
cat("# Cochran, Statistical Methods) and oats in a split plot (Yates 1935), from the files of agro/stats/linear.\n")
cat("# mean, low, high: back on the scale of the values, 95 %. Tolerance 1e-8 relative.\n")
cat("case,quantity,label,value\n")
put <- function(case, quantity, label, value)
  cat(sprintf("%s,%s,%s,%.15g\n", case, quantity, label, value))

scale <- function(case, f, back) {
  d <- InsectSprays
  fit <- lm(f(count) ~ spray - 1, d)
  a <- anova(lm(f(count) ~ spray, d))
  put(case, "F", "treatment", a$F[1])
  put(case, "P", "treatment", a$P[1])
  ci <- confint(fit)
  for (i in 1:6) {
    put(case, "mean", LETTERS[i], back(coef(fit)[i]))
    put(case, "low", LETTERS[i], back(ci[i, 1]))
    put(case, "high", LETTERS[i], back(ci[i, 2]))
  }
  sed <- sqrt(2 * a$Mean[2] / 12)
  put(case, "sed", "", sed)
  put(case, "lsd", "", qt(0.975, 66) * sed)
}
scale("raw", identity, identity)
scale("root", sqrt, function(x) x^2)
scale("root half", function(y) sqrt(y + 0.5), function(x) x^2 - 0.5)
scale("log", function(y) log10(y + 1), function(x) 10^x - 1)

model <- function(case, family) {
  fit <- glm(count ~ spray - 1, family, InsectSprays, control = glm.control(1e-14, 100))
  s <- coef(summary(fit))
  q <- if (family()$family == "poisson") qnorm(0.975) else qt(0.975, 66)
  for (i in 1:6) {
    put(case, "mean", LETTERS[i], exp(s[i, 1]))
    put(case, "low", LETTERS[i], exp(s[i, 1] - q * s[i, 2]))
    put(case, "high", LETTERS[i], exp(s[i, 1] + q * s[i, 2]))
  }
}
model("poisson", poisson)
model("quasi-Poisson", quasipoisson)

folder <- "../../stats/linear"
soy <- read.csv(file.path(folder, "soybean.csv"), comment.char = "#")
soy$block <- factor(soy$block)
fit <- lm(failures ~ block + treatment, soy, contrasts = list(block = "contr.sum"))
a <- anova(fit)
put("soybean", "F", "treatment", a$F[2])
put("soybean", "P", "treatment", a$P[2])
sed <- sqrt(2 * a$Mean[3] / 5)
put("soybean", "sed", "", sed)
put("soybean", "lsd", "", qt(0.975, 16) * sed)
put("soybean", "cv", "", 100 * sqrt(a$Mean[3]) / mean(soy$failures))
m <- tapply(soy$failures, soy$treatment, mean)
half <- qt(0.975, 16) * sqrt(a$Mean[3] / 5)
for (t in names(m)) {
  put("soybean", "mean", t, m[t])
  put("soybean", "low", t, m[t] - half)
  put("soybean", "high", t, m[t] + half)
}
# The true difference that a single two-sided t test finds with a chance of 80 %.
power <- function(delta, df) 1 - pt(qt(0.975, df), df, delta) + pt(-qt(0.975, df), df, delta)
delta <- uniroot(function(d) power(d, 16) - 0.8, c(1, 10), tol = 1e-13)$root
put("soybean", "detectable", "", delta * sed)

oats <- read.csv(file.path(folder, "yates-oats.csv"), comment.char = "#")
ea <- 6013.30555555556 / 10
eb <- 7968.75 / 45
put("oats", "sed", "variety", sqrt(2 * ea / 24))
put("oats", "sed", "nitrogen", sqrt(2 * eb / 18))
put("oats", "lsd", "nitrogen", qt(0.975, 45) * sqrt(2 * eb / 18))
put("oats", "sed same", "both", sqrt(2 * eb / 6))
put("oats", "sed different", "both", sqrt(2 * (ea + 3 * eb) / 24))
