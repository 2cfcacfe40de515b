# Yield against insect-days (invented plots) by lm, and a field of two strata by hand. Writes what yield-loss.csv and
# StratifiedMeanTest hold.
options(digits = 12)
cid <- c(0, 120, 350, 610, 980, 1400, 1850, 2400)
y <- c(4.62, 4.55, 4.31, 4.20, 3.88, 3.61, 3.30, 2.79)
fit <- lm(y ~ cid)
print(summary(fit)); print(vcov(fit)); print(confint(fit))
print(predict(fit, data.frame(cid = 1000), interval = "confidence"))
print(predict(fit, data.frame(cid = 1000), interval = "prediction"))
edge <- c(8, 3, 5, 0, 9, 11); middle <- c(1, 0, 2, 0, 0, 3, 1, 1)
w <- c(120, 680) / 800
m <- sum(w * c(mean(edge), mean(middle)))
v <- sum(w^2 * c(var(edge) / 6 * (1 - 6 / 120), var(middle) / 8 * (1 - 8 / 680)))
cat("mean", m, "se", sqrt(v), "se without correction",
    sqrt(sum(w^2 * c(var(edge) / 6, var(middle) / 8))), "\n")
s <- c(sd(edge), sd(middle)); n <- c(120, 680)
cat("allocation of 20", 20 * n * s / sum(n * s), "\n")
all <- c(4, 0, 7, 2, 9, 3); dead <- c(1, 0, 3, 0, 2, 1)
p <- sum(dead) / sum(all)
cat("share", p, "se", sqrt(sum((dead - p * all)^2) / (6 * 5)) / mean(all), "\n")
