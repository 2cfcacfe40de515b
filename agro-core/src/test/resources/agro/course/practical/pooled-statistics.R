# Pooled statistics of invented spray volumes by base R: mean, standard deviation, t interval, median, median
# absolute deviation and the modified z-scores after Iglewicz and Hoaglin. Call: Rscript pooled-statistics.R
sets <- list(
  even = c(301.2, 288.4, 310.9, 295.3, 299.8, 305.5),
  outlier = c(301.2, 288.4, 310.9, 295.3, 299.8, 395.1, 237),
  two = c(280, 320),
  spread = c(12, 480, 300, 900),
  many = c(314.9, 289.6, 295.2, 254.8, 310.4, 282, 312.7, 297.1, 395.2, 294.4, 320.2, 290.4, 263.3),
  half_alike = c(300, 300, 300, 300, 310, 290, 420))
level <- 0.95
version <- paste(R.version$major, R.version$minor, sep = ".")
digits <- function(x) paste(format(x, digits = 12, trim = TRUE, scientific = FALSE), collapse = ";")
head <- c(
  paste0("# Invented spray volumes in L/ha, summed up by base R ", version, " (pooled-statistics.R)."),
  "# mean, sd, t.test(x)$conf.int at 0.95 (cut off at zero), median, mad(x, constant = 1), and",
  "# qnorm(0.75) * (x - median) / mad where mad is not zero. Tolerance: relative 1e-9.",
  "set,values,mean,sd,low,high,median,mad,scores")
lines <- sapply(names(sets), function(n) {
  x <- sets[[n]]
  ci <- t.test(x, conf.level = level)$conf.int
  m <- mad(x, constant = 1)
  z <- if (m > 0) digits(qnorm(0.75) * (x - median(x)) / m) else ""
  paste(n, paste(x, collapse = ";"), digits(mean(x)), digits(sd(x)), digits(max(0, ci[1])), digits(ci[2]),
        digits(median(x)), digits(m), z, sep = ",")
})
writeLines(c(head, lines), "pooled-statistics.csv")
