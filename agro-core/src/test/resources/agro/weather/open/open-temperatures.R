# Degree-days of the open temperature files in base R: written for this check, from the integrals of
# the day's curve and not from closed forms. Run in this folder:  Rscript open-temperatures.R
# It writes open-temperatures.csv.
options(digits = 12)
daily <- read.csv("seattle-daily.csv", comment.char = "#")
daily$date <- as.Date(daily$date)
year <- as.integer(format(daily$date, "%Y"))

# Area of a half day's curve above a threshold by numerical integration, split at the crossing.
above <- function(curve, from, to, threshold) {
  if (threshold >= max(from, to)) return(0)
  if (threshold <= min(from, to)) {
    return(integrate(function(x) curve(x, from, to) - threshold, 0, 1, rel.tol = 1e-12)$value)
  }
  crossing <- uniroot(function(x) curve(x, from, to) - threshold, c(0, 1), tol = 1e-14)$root
  span <- if (to > from) c(crossing, 1) else c(0, crossing)
  integrate(function(x) curve(x, from, to) - threshold, span[1], span[2], rel.tol = 1e-12)$value
}
sine <- function(x, from, to) (from + to) / 2 - (to - from) / 2 * cos(pi * x)
line <- function(x, from, to) from + (to - from) * x
halfday <- function(curve, from, to, lower, upper) {
  a <- above(curve, from, to, lower)
  if (is.na(upper)) a else a - above(curve, from, to, upper)
}
single <- function(curve, lower, upper) mapply(function(n, x)
  halfday(curve, n, x, lower, upper), daily$temp_min, daily$temp_max)
double <- function(curve, lower, upper) {
  n <- nrow(daily); tomorrow <- c(daily$temp_min[-1], daily$temp_min[n])
  mapply(function(n1, x, n2) (halfday(curve, n1, x, lower, upper) +
    halfday(curve, n2, x, lower, upper)) / 2, daily$temp_min, daily$temp_max, tomorrow)
}
clip <- function(t, lower, upper) pmin(pmax(t, lower), upper)
mean_limited <- function(lower, upper)
  clip((daily$temp_min + daily$temp_max) / 2, lower, if (is.na(upper)) Inf else upper) - lower
extremes_limited <- function(lower, upper) {
  u <- if (is.na(upper)) Inf else upper
  (clip(daily$temp_min, lower, u) + clip(daily$temp_max, lower, u)) / 2 - lower
}
methods <- list(
  SINGLE_SINE = function(l, u) single(sine, l, u), DOUBLE_SINE = function(l, u) double(sine, l, u),
  SINGLE_TRIANGLE = function(l, u) single(line, l, u), DOUBLE_TRIANGLE = function(l, u) double(line, l, u),
  AVERAGE_MEAN_LIMITED = mean_limited, AVERAGE_EXTREMES_LIMITED = extremes_limited)

rows <- list()
for (name in names(methods)) for (upper in c(NA, 25)) {
  dd <- methods[[name]](10, upper)
  for (y in 2012:2015) {
    sums <- cumsum(dd[year == y])
    reach <- function(k) {
      i <- which(sums >= k)[1]
      before <- if (i == 1) 0 else sums[i - 1]
      i - 1 + (k - before) / (sums[i] - before)
    }
    rows[[length(rows) + 1]] <- data.frame(file = "seattle-daily.csv", method = name, lower_c = 10,
      upper_c = upper, year = y, days = length(sums), total_c_d = tail(sums, 1),
      days_until_100 = reach(100), days_until_500 = reach(500))
  }
}
hourly <- read.csv("seattle-hourly-normals.csv", comment.char = "#")
hour <- as.POSIXct(hourly$date, format = "%Y-%m-%dT%H:%M:%S", tz = "UTC")
day <- as.Date(hour)
lows <- tapply(hourly$temperature, day, min); highs <- tapply(hourly$temperature, day, max)
count <- tapply(hourly$temperature, day, length)
whole <- count == 24
lows <- lows[whole]; highs <- highs[whole]
dd <- mapply(function(n, x) halfday(sine, n, x, 10, NA), lows, highs)
sums <- cumsum(dd)
reach <- function(k) { i <- which(sums >= k)[1]; i - 1 + (k - sums[i - 1]) / (sums[i] - sums[i - 1]) }
rows[[length(rows) + 1]] <- data.frame(file = "seattle-hourly-normals.csv", method = "SINGLE_SINE",
  lower_c = 10, upper_c = NA, year = 2010, days = length(sums), total_c_d = tail(sums, 1),
  days_until_100 = reach(100), days_until_500 = reach(500))
# Sum over the readings: straight lines from hour to hour, the last reading held for one hour, days cut at
# midnight; the first day lacks an hour and is left out.
seconds <- as.numeric(hour); temperature <- hourly$temperature
ends <- c(seconds[-1], tail(seconds, 1) + 3600); next_temperature <- c(temperature[-1], tail(temperature, 1))
stopifnot(all(ends - seconds == 3600))
along <- function(from, to, threshold) {
  if (max(from, to) <= threshold) return(0)
  if (min(from, to) >= threshold) return((from + to) / 2 - threshold)
  (max(from, to) - threshold)^2 / (2 * abs(to - from))
}
for (upper in c(NA, 18)) for (lower in c(5, 10)) {
  hours <- mapply(along, temperature, next_temperature, lower)
  if (!is.na(upper)) hours <- hours - mapply(along, temperature, next_temperature, upper)
  sums <- cumsum(tapply(hours, day, sum)[whole] / 24)
  rows[[length(rows) + 1]] <- data.frame(file = "seattle-hourly-normals.csv", method = "SUM_OVER_READINGS",
    lower_c = lower, upper_c = upper, year = 2010, days = length(sums), total_c_d = tail(sums, 1),
    days_until_100 = reach(100), days_until_500 = reach(500))
}
out <- do.call(rbind, rows)
for (column in 7:9) out[[column]] <- sprintf("%.9f", out[[column]])
out$upper_c <- ifelse(is.na(out$upper_c), "", out$upper_c)
header <- c(
  "# Degree-days above 10 degrees Celsius (cutoff at 25: horizontal) of the open files in this folder, from",
  "# 1 January: sum of the year in degree-days C, and days until 100 and 500 (growing evenly in a day).",
  paste0("# Computed by open-temperatures.R with ", R.version.string, ", by integrating the day's curve."),
  "# Whole days of 24 hours alone are counted in the hourly file. Another cutoff than 25 is horizontal too.",
  "# Tolerance: 1e-6.")
con <- file("open-temperatures.csv", "w", encoding = "UTF-8")
writeLines(header, con); write.csv(out, con, row.names = FALSE, quote = FALSE); close(con)
