# Degree-days of random days by base R, as an outside check of the closed forms.
#
# Rscript single-sine-random-days.R > single-sine-random-days.csv
#
# The temperature of a day is M + W sin(x), x from -pi/2 to pi/2 and back, so the mean over the first
# half is the mean over the day. Every integral is split where the curve crosses a threshold: between
# two crossings the integrand is smooth, also for the vertical cutoff, which jumps at the crossing.
seed <- 19690514
set.seed(seed, kind = "Mersenne-Twister", sample.kind = "Rejection")
n <- 500

daily <- function(tmin, tmax, lower, upper, cutoff) {
  m <- (tmax + tmin) / 2
  w <- (tmax - tmin) / 2
  curve <- function(x) m + w * sin(x)
  rate <- function(x, warm, hot) {
    t <- curve(x)
    if (!warm) return(0 * x)
    if (!hot) return(t - lower)
    switch(cutoff,
           none = t - lower,
           horizontal = 0 * x + (upper - lower),
           intermediate = 2 * upper - lower - t,
           vertical = 0 * x)
  }
  inside <- c(lower, upper)
  inside <- inside[inside > tmin & inside < tmax]
  cuts <- c(-pi / 2, sort(asin((inside - m) / w)), pi / 2)
  total <- 0
  for (i in seq_len(length(cuts) - 1)) {
    middle <- curve((cuts[i] + cuts[i + 1]) / 2)
    piece <- integrate(rate, cuts[i], cuts[i + 1], warm = middle > lower, hot = middle > upper,
                       rel.tol = 1e-11, abs.tol = 1e-12, subdivisions = 1000L)
    total <- total + piece$value
  }
  max(0, total / pi)
}

tmin <- runif(n, -10, 35)
tmax <- tmin + runif(n, 0, 25)
lower <- runif(n, 0, 15)
upper <- lower + runif(n, 5, 25)
cutoffs <- c("none", "horizontal", "intermediate", "vertical")
values <- sapply(cutoffs, function(cutoff)
  mapply(daily, tmin, tmax, lower, upper, MoreArgs = list(cutoff = cutoff)))

cat("# Degree-days of", n, "random days by numerical integration, invented temperatures.\n")
cat("# Computed by", R.version.string, "with integrate() split at the crossings, rel.tol 1e-11;\n")
cat("#   call: Rscript single-sine-random-days.R; seed", seed, "\n")
cat("# Intermediate cutoff: the daily total is floored at zero.\n")
cat("# Tolerance: 1e-9 degC.d absolute.\n")
write.table(format(data.frame(min = tmin, max = tmax, lower, upper, values), digits = 17, trim = TRUE),
            sep = ",", row.names = FALSE, quote = FALSE)
