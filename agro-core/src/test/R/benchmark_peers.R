# What a user would otherwise write in base R.
#
# usage: Rscript benchmark_peers.R JOB ROUNDS
#
# Runs one job and prints the seconds of each round as a JSON list.

arguments <- commandArgs(trailingOnly = TRUE)
job <- arguments[1]
rounds <- as.integer(arguments[2])

area_above <- function(low, high, threshold) {
  mean <- 0.5 * (low + high)
  amplitude <- 0.5 * (high - low)
  angle <- asin(pmin(pmax((threshold - mean) / amplitude, -1), 1))
  between <- ((mean - threshold) * (pi / 2 - angle) + amplitude * cos(angle)) / pi
  ifelse(high <= threshold, 0, ifelse(low >= threshold, mean - threshold, between))
}

# Single sine, horizontal cutoff, 10 million station-days.
degree_days <- function() {
  set.seed(1)
  days <- 1e7
  means <- 12 + 10 * sin(2 * pi * (0:(days - 1)) / 365.25) + 2 * rnorm(days)
  amplitudes <- 3 + 4 * runif(days)
  low <- means - amplitudes
  high <- means + amplitudes
  function() area_above(low, high, 10) - area_above(low, high, 30)
}

run <- switch(job, "degree-days" = degree_days())
seconds <- sapply(seq_len(rounds), function(i) system.time(run())[["elapsed"]])
cat("[", paste(seconds, collapse = ", "), "]\n", sep = "")
