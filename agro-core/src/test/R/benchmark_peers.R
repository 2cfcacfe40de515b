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

# 1,000 probit fits of the five doses of rotenone on chrysanthemum aphid.
probit_fits <- function() {
  x <- log10(c(10.2, 7.7, 5.1, 3.8, 2.6))
  exposed <- c(50, 49, 46, 48, 50)
  responded <- c(44, 42, 24, 16, 6)
  function() {
    for (i in 1:1000) {
      glm(cbind(responded, exposed - responded) ~ x, family = binomial(probit))
    }
  }
}

# 200 one-way analyses of variance with Tukey's comparisons.
comparisons <- function() {
  function() for (i in 1:200) TukeyHSD(aov(sqrt(count) ~ spray, InsectSprays))
}

# Henderson and Tilton of six treatments in six blocks, 2,000 draws of blocks each.
efficacy_bootstrap <- function() {
  block <- 1:6
  control <- cbind(30 + 7 * block %% 13, 40 + 5 * block %% 11)
  efficacy <- function(treated, i) {
    100 * (1 - sum(treated[i, 2]) * sum(control[i, 1]) / sum(treated[i, 1]) / sum(control[i, 2]))
  }
  function() {
    for (each in 1:6) {
      treated <- cbind(25 + (11 * block + 3 * each) %% 17, 3 * each + block * each %% 5)
      draws <- replicate(2000, efficacy(treated, sample(6, replace = TRUE)))
      quantile(draws, c(0.025, 0.975))
    }
  }
}

run <- switch(job,
  "degree-days" = degree_days(),
  "probit-fits" = probit_fits(),
  "comparisons" = comparisons(),
  "efficacy-bootstrap" = efficacy_bootstrap()
)
seconds <- sapply(seq_len(rounds), function(i) system.time(run())[["elapsed"]])
cat("[", paste(seconds, collapse = ", "), "]\n", sep = "")
