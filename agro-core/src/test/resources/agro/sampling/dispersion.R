# Dispersion of counts in base R. Run in this folder:  Rscript dispersion.R   Writes dispersion.csv.
samples <- list(hand = c(0, 3, 1, 0, 5, 2, 0, 1),
  mites = rep(0:8, c(70, 38, 17, 10, 9, 3, 2, 1, 0)))
for (s in LETTERS[1:6]) samples[[paste0("spray", s)]] <- InsectSprays$count[InsectSprays$spray == s]
rows <- list()
add <- function(sample, quantity, value)
  rows[[length(rows) + 1]] <<- data.frame(sample, quantity, value = sprintf("%.12g", value))
root <- function(f, a, b) uniroot(f, c(a, b), tol = 1e-15)$root
for (name in names(samples)) {
  x <- samples[[name]]; n <- length(x); m <- mean(x); v <- var(x); s <- sum(x)
  add(name, "mean", m); add(name, "variance", v); add(name, "variance_to_mean", v / m)
  I <- (n - 1) * v / m; add(name, "index", I); add(name, "chance_larger", pchisq(I, n - 1, lower.tail = FALSE))
  add(name, "chance_smaller", pchisq(I, n - 1)); add(name, "deviate", sqrt(2 * I) - sqrt(2 * (n - 1) - 1))
  add(name, "david_moore", v / m - 1); add(name, "green", (v / m - 1) / (s - 1))
  mor <- n * sum(x * (x - 1)) / (s * (s - 1)); add(name, "morisita", mor)
  mu <- (qchisq(.025, n - 1) - n + s) / (s - 1); mc <- (qchisq(.975, n - 1) - n + s) / (s - 1)
  add(name, "morisita_uniform", mu); add(name, "morisita_clumped", mc)
  ip <- if (mor >= mc) .5 + .5 * (mor - mc) / (n - mc) else if (mor >= 1) .5 * (mor - 1) / (mc - 1) else
    if (mor > mu) -.5 * (mor - 1) / (mu - 1) else -.5 + .5 * (mor - mu) / mu
  add(name, "morisita_standardised", ip)
  add(name, "crowding", m + v / m - 1); add(name, "crowding_in_sample", sum(x * (x - 1)) / s)
  add(name, "patchiness", (m + v / m - 1) / m)
  if (v > m) add(name, "k_moments", m^2 / (v - m))
  loglik <- function(k) sum(dnbinom(x, size = k, mu = m, log = TRUE))
  if (sum((x - m)^2) / n > m) {
    score <- function(k) sum(digamma(x + k) - digamma(k)) - n * log(1 + m / k)
    k <- root(score, 1e-3, 1e4); add(name, "k_likelihood", k)
    info <- sum(trigamma(k) - trigamma(x + k)) - n * m / (k * (k + m)); add(name, "k_error", 1 / sqrt(info))
    add(name, "log_likelihood", loglik(k))
    if (name == "mites") {
      for (i in 0:8) add(name, paste0("expected_", i), n * dnbinom(i, size = k, mu = m))
      for (from in 5:6) { e <- n * c(dnbinom(0:(from - 1), size = k, mu = m), pnbinom(from - 1, size = k, mu = m, lower.tail = FALSE))
        o <- c(sapply(0:(from - 1), function(i) sum(x == i)), sum(x >= from)); q <- sum((o - e)^2 / e)
        add(name, paste0("chi_squared_", from), q); add(name, paste0("chi_chance_", from), pchisq(q, from - 2, lower.tail = FALSE)) }
    }
  }
  add(name, "poisson_log_likelihood", sum(dpois(x, m, log = TRUE)))
  if (any(x == 0) && -log(mean(x == 0)) < m) add(name, "k_zero_class", root(function(k) k * log(1 + m / k) + log(mean(x == 0)), 1e-3, 1e4))
}
sprays <- samples[grep("spray", names(samples))]
m <- sapply(sprays, mean); v <- sapply(sprays, var); n <- 12
X <- m^2 - v / n; Y <- v - m
add("sprays", "common_ratio", sum(X) / sum(Y)); add("sprays", "common_origin", sum(X^2) / sum(X * Y))
k <- sum(X) / sum(Y)
for (i in 1:200) { w <- 0.5 * (n - 1) * k^4 / (m^2 * (m + k)^2 * (k * (k + 1) - (2 * k - 1) / n - 3 / n^2)); k <- sum(w * X^2) / sum(w * X * Y)
  if (i <= 3) add("sprays", paste0("common_step_", i), k) }
add("sprays", "common_weighted", k)
score <- function(k) sum(sapply(sprays, function(x) sum(digamma(x + k) - digamma(k)) - n * log(1 + mean(x) / k)))
k <- root(score, 1, 1e4); add("sprays", "common_likelihood", k)
add("sprays", "common_error", 1 / sqrt(sum(sapply(sprays, function(x) sum(trigamma(k) - trigamma(x + k)) - n * mean(x) / (k * (k + mean(x)))))))
f <- lm(log(v) ~ log(m)); c <- summary(f)$coefficients
add("sprays", "taylor_a", exp(c[1, 1])); add("sprays", "taylor_b", c[2, 1]); add("sprays", "taylor_b_error", c[2, 2])
add("sprays", "taylor_r2", summary(f)$r.squared); t <- (c[2, 1] - 1) / c[2, 2]; add("sprays", "taylor_t", t)
add("sprays", "taylor_chance", 2 * pt(-abs(t), 4))
ms <- m + v / m - 1; f <- lm(ms ~ m); c <- summary(f)$coefficients
add("sprays", "iwao_alpha", c[1, 1]); add("sprays", "iwao_alpha_error", c[1, 2]); add("sprays", "iwao_beta", c[2, 1])
add("sprays", "iwao_beta_error", c[2, 2]); add("sprays", "iwao_r2", summary(f)$r.squared); add("sprays", "iwao_t", (c[2, 1] - 1) / c[2, 2])
header <- c("# Dispersion of counts. hand: eight invented counts; mites: European red mites on 150 apple leaves, Bliss & Fisher 1953,",
  "# Biometrics 9:176-200 (their mean 1.1467 and k of about 1.0246 from memory); sprayA to sprayF: data set InsectSprays of R.",
  paste0("# Computed by dispersion.R with ", R.version.string, ". Tolerance: 1e-8 relative, 1e-6 for iterated values."))
con <- file("dispersion.csv", "w", encoding = "UTF-8")
writeLines(header, con); write.csv(do.call(rbind, rows), con, row.names = FALSE, quote = FALSE); close(con)
