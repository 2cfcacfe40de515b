# Harmonic normals of seattle-daily.csv by lm and glm of base R.
# Run in this folder: Rscript seattle-normals.R > seattle-normals.csv
days <- read.csv("../open/seattle-daily.csv", comment.char = "#")
date <- as.Date(days$date)
year <- as.integer(format(date, "%Y"))
leap <- (year %% 4 == 0 & year %% 100 != 0) | year %% 400 == 0
phase <- 2 * pi * (as.integer(format(date, "%j")) - 0.5) / ifelse(leap, 366, 365)
n <- length(date)

basis <- function(phase, h) {
  if (h == 0) return(matrix(1, length(phase), 1))
  cbind(1, do.call(cbind, lapply(seq_len(h), function(k) cbind(cos(k * phase), sin(k * phase)))))
}
lag1 <- function(r) {
  first <- r[-n]; second <- r[-1]
  sum(first * second) / sqrt(sum(first^2) * sum(second^2))
}
at <- as.Date(c("2014-01-15", "2014-04-10", "2012-02-29", "2014-08-01", "2014-12-31"))
at_year <- as.integer(format(at, "%Y"))
at_phase <- 2 * pi * (as.integer(format(at, "%j")) - 0.5) / ifelse(at_year == 2012, 366, 365)

cat("# Computed with", R.version.string, "by seattle-normals.R (lm; glm with family Gamma and log link).\n")
cat("# Data: ../open/seattle-daily.csv. Tolerance 1e-8, relative for the spread.\n")
cat("extreme,what,key,value\n")
standardised <- list()
for (extreme in c("minimum", "maximum")) {
  y <- if (extreme == "minimum") days$temp_min else days$temp_max
  rough <- resid(lm(y ~ basis(phase, 4) - 1))
  r <- lag1(rough)
  independent <- n * (1 - r) / (1 + r)
  criteria <- sapply(0:4, function(h) {
    res <- resid(lm(y ~ basis(phase, h) - 1))
    independent * log(sum(res^2) / n) + (2 * h + 1) * log(independent)
  })
  best <- which.min(criteria) - 1
  fit <- lm(y ~ basis(phase, best) - 1)
  squares <- resid(fit)^2 * n / (n - (2 * best + 1))
  variance <- glm(squares ~ basis(phase, 1) - 1, family = Gamma(link = "log"),
                  start = c(log(mean(squares)), 0, 0),
                  control = glm.control(epsilon = 1e-15, maxit = 200))
  z <- resid(fit) / sqrt(fitted(variance))
  standardised[[extreme]] <- z
  phi <- lag1(z)
  X <- basis(phase, best)
  cov <- mean(squares) * solve(crossprod(X)) * (1 + phi) / (1 - phi)
  B <- basis(at_phase, best)
  row <- function(what, key, value) cat(extreme, ",", what, ",", key, ",", sprintf("%.12g", value), "\n", sep = "")
  for (h in 0:4) row("criterion", h, criteria[h + 1])
  row("harmonics", "", best)
  for (k in seq_along(coef(fit))) row("coefficient", k - 1, coef(fit)[k])
  row("lag1", "", phi)
  for (k in seq_along(at)) {
    row("normal", format(at[k]), sum(B[k, ] * coef(fit)))
    row("spread", format(at[k]), exp(0.5 * sum(basis(at_phase[k], 1) * coef(variance))))
    row("error", format(at[k]), sqrt(B[k, ] %*% cov %*% B[k, ]))
  }
}
z1 <- standardised$minimum; z2 <- standardised$maximum
cat("both,correlation,,", sprintf("%.12g", sum(z1 * z2) / sqrt(sum(z1^2) * sum(z2^2))), "\n", sep = "")
