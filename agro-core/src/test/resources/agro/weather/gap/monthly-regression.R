# Straight line of the maxima on the minima of one month of seattle-daily.csv, by lm of base R.
# Run in this folder: Rscript monthly-regression.R > monthly-regression.csv
days <- read.csv("../open/seattle-daily.csv", comment.char = "#")
month <- as.integer(substr(days$date, 6, 7))
cat("# Computed with", R.version.string, "by monthly-regression.R: lm(temp_max ~ temp_min), predict with se.fit.\n")
cat("# Data: ../open/seattle-daily.csv, all days of the month. at: minimum; value: predicted maximum;\n")
cat("# prediction_error: square root of residual variance plus variance of the line. Tolerance 1e-9.\n")
cat("month,at,value,deviation,prediction_error\n")
for (m in c(1, 6, 10)) {
  fit <- lm(temp_max ~ temp_min, data = days[month == m, ])
  for (at in c(2, 9.5, 17)) {
    p <- predict(fit, data.frame(temp_min = at), se.fit = TRUE)
    cat(m, at, sprintf("%.13g", p$fit), sprintf("%.13g", p$residual.scale),
        sprintf("%.13g", sqrt(p$residual.scale^2 + p$se.fit^2)), sep = ",")
    cat("\n")
  }
}
