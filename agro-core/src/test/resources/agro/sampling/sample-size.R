# Writes the values of sample-size.csv. Run in this folder:  Rscript sample-size.R
m <- 2; k <- 1.5; a <- 2.5; b <- 1.4; al <- .8; be <- 1.3; D <- .25; z <- qnorm(.975)
v <- list()
v$known <- 3.2^2 / (.1 * 4)^2; v$poisson <- 1 / (D^2 * m); v$nb <- (1 / m + 1 / k) / D^2; v$binomial <- .8 / (.2 * D^2)
v$poisson_half <- z^2 * v$poisson; v$nb_half <- z^2 * v$nb; v$binomial_half <- z^2 * v$binomial
v$poisson_abs <- (z / .5)^2 * m; v$nb_abs <- (z / .5)^2 * (m + m^2 / k); v$binomial_abs <- (z / .05)^2 * .16
v$taylor <- a * m^(b - 2) / D^2; v$taylor_half <- z^2 * v$taylor
n <- 50; repeat { q <- ceiling((qt(.975, n - 1) / D)^2 * (a * m^b) / m^2); if (q == n) break; n <- q }; v$taylor_student <- n
v$iwao <- ((al + 1) / m + be - 1) / D^2; v$iwao_half <- z^2 * v$iwao
v$finite <- v$taylor / (1 + v$taylor / 100); v$two_levels <- sqrt(6.4 / 1.6 * 10 / 2)
green <- function(n, D) exp(log(D^2 / a) / (b - 2) + (b - 1) / (b - 2) * log(n))
for (n in c(5, 10, 20, 30, 50, 100)) { v[[paste0("green_", n)]] <- green(n, .25); v[[paste0("kuno_", n)]] <- (al + 1) / (D^2 - (be - 1) / n) }
for (n in c(10, 50, 100)) v[[paste0("green_fine_", n)]] <- green(n, .1)
for (n in c(20, 30, 50)) v[[paste0("kuno_nb_", n)]] <- 1 / (D^2 - 1 / (k * n))
v$kuno_poisson <- 1 / D^2
for (kk in c(.5, 2)) for (mm in c(.5, 2, 5)) v[[paste("zero_share", kk, mm, sep = "_")]] <- 1 - dnbinom(0, size = kk, mu = mm)
v$zero_share_mites <- 1 - dnbinom(0, size = 1.02459238679, mu = 172 / 150)
v$mean_poisson <- -log(.6); for (kk in c(.5, 1, 2)) v[[paste0("mean_nb_", kk)]] <- uniroot(function(m) 1 - dnbinom(0, size = kk, mu = m) - .4, c(1e-6, 50), tol = 1e-15)$root
v$var_poisson <- .4 / (50 * .6); for (kk in c(.5, 1, 2)) { v[[paste0("var_nb_", kk)]] <- .4 * .6^(-2 / kk - 1) / 50
  v[[paste0("units_nb_", kk)]] <- .4 * .6^(-2 / kk - 1) / (D^2 * v[[paste0("mean_nb_", kk)]]^2) }
for (mm in c(.5, 1, 2, 5, 10)) { kk <- mm / (a * mm^(b - 1) - 1); v[[paste0("wilson_room_", mm)]] <- 1 - dnbinom(0, size = kk, mu = mm) }
for (t in c(0, 1, 2, 3, 5)) { v[[paste0("tally_nb_", t)]] <- pnbinom(t, size = 1.5, mu = 5, lower.tail = FALSE); v[[paste0("tally_poisson_", t)]] <- ppois(t, 5, lower.tail = FALSE) }
mm <- c(.25, .5, 1, 2, 4); P <- mm / (1 + mm); x <- log(-log(1 - P)); f <- lm(log(mm) ~ x); s <- summary(f)$coefficients
v$line_intercept <- s[1, 1]; v$line_slope <- s[2, 1]; v$line_r2 <- summary(f)$r.squared; mse <- summary(f)$sigma^2; v$line_mse <- mse
x0 <- log(-log(.6)); mh <- exp(s[1, 1] + s[2, 1] * x0); c1 <- s[2, 1]^2 * .4 / (50 * .6 * log(.6)^2); c2 <- mse / 5 + (x0 - mean(x))^2 * s[2, 2]^2
c4 <- exp(log(a) + (b - 2) * log(mh)) / 50
v$line_mean <- mh; v$line_c1 <- c1; v$line_c2 <- c2; v$line_c4 <- c4; v$line_variance <- mh^2 * (c1 + c2 + mse - c4); v$line_cautious <- mh^2 * (c1 + c2 + max(0, mse - c4))
head <- grep("^#|^name", readLines("sample-size.csv", encoding = "UTF-8"), value = TRUE)
writeLines(c(head, sprintf("%s,%.13g", names(v), unlist(v))), "sample-size.csv")
