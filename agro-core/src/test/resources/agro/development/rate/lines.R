# Straight lines through the rearings of rearings.csv. Run: Rscript lines.R (in this folder)
data <- read.csv("rearings.csv", comment.char = "#")
data <- data[data$days != "none", ]
data$days <- as.numeric(data$days)
line <- function(set, low = 0, high = 50) {
  d <- data[data$set == set & data$celsius >= low & data$celsius <= high, ]
  d$rate <- 1 / d$days
  fit <- lm(rate ~ celsius, d)
  b <- coef(fit)[[2]]
  se <- summary(fit)$coefficients[2, 2]
  s <- summary(fit)$sigma
  r <- mean(d$rate)
  lower <- -coef(fit)[[1]] / b
  lower_error <- r / b * sqrt(s^2 / (nrow(d) * r^2) + (se / b)^2)
  cat(set, "least squares:", format(c(lower, 1 / b, lower_error, se / b^2,
                                      sqrt(summary(fit)$r.squared)), digits = 8), "\n")
  product <- d$days * d$celsius
  slope <- sign(cor(d$days, product)) * sd(product) / sd(d$days)
  cat(set, "reduced major axis:", format(c(slope, mean(product) - slope * mean(d$days),
                                           cor(d$days, product)), digits = 8), "\n")
}
for (set in c("gastrophysa", "exigua", "barrientos", "cuthbertson")) line(set)
line("oligota", 12, 30)
