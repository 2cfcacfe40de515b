# Rates of published parameter sets, formulas written out in base R. Run: Rscript published-curves.R
# Prints the lines of published-curves.csv and curve-points.csv.
line <- function(celsius, lower, k) pmax(0, celsius - lower) / k
briere1 <- function(celsius, a, t0, tl)
  ifelse(celsius > t0 & celsius < tl, a * celsius * (celsius - t0) * sqrt(pmax(tl - celsius, 0)), 0)
schoolfield4 <- function(celsius, rho, ha, hh, th, tref = 298, r = 1.9858775) {
  kelvin <- celsius + 273.15
  rho * kelvin / tref * exp(ha / r * (1 / tref - 1 / kelvin)) /
    (1 + exp(hh / r * (1 / th - 1 / kelvin)))
}
phi <- function(hl, hh, tl, th, r = 1.987) (hl - hh) / (r * log(-hl / hh) + hl / tl - hh / th)
intrinsic <- function(celsius, rho, ha, hl, hh, tl, th, r = 1.987) {
  kelvin <- celsius + 273.15
  tphi <- phi(hl, hh, tl, th, r)
  rho * kelvin / tphi * exp(ha / r * (1 / tphi - 1 / kelvin)) /
    (1 + exp(hl / r * (1 / tl - 1 / kelvin)) + exp(hh / r * (1 / th - 1 / kelvin)))
}
wang_engel <- function(celsius, low, best, high) {
  alpha <- log(2) / log((high - low) / (best - low))
  x <- celsius - low
  y <- best - low
  (2 * x^alpha * y^alpha - x^(2 * alpha)) / y^(2 * alpha)
}
cardinal <- function(celsius, tb, to, tc)
  (tc - celsius) / (tc - to) * ((celsius - tb) / (to - tb))^((to - tb) / (tc - to))
optimum <- function(f, from, to) optimize(f, c(from, to), maximum = TRUE, tol = 1e-10)

options(digits = 12)
print(1 / line(c(15, 20, 25, 30), 8, 416.7))
print(1 / line(c(18, 22, 26, 30), 12.57, 391.61))
print(1 / line(c(20, 26, 30), 12.5, 146.48))
for (set in list(c(1.11e-4, 14.7, 34), c(2.03e-4, 11.7, 42.3), c(7.86e-5, 11.36, 39.17))) {
  f <- function(celsius) briere1(celsius, set[1], set[2], set[3])
  print(f(c(15, 20, 25, 30)))
  print(optimum(f, set[2], set[3]))
}
larva <- function(celsius) schoolfield4(celsius, 0.2088, 26018, 55990, 304.6)
print(larva(c(15, 18, 20, 25, 27, 30, 33, 35)))
print(optimum(larva, 20, 40))
print(schoolfield4(c(15, 25, 30, 35), 0.24, 10798, 100000, 14184))
print(schoolfield4(c(15, 25, 30), 0.384, 14931, -472379, 148))
print(c(schoolfield4(25, 0.2088, 26018, 55990, 304.6, 298.15),
        schoolfield4(25, 0.2088, 26018, 55990, 304.6, 298, 1.987)))
print(wang_engel(c(5, 10, 15, 20, 24, 30, 34), 0, 24, 35))
print(cardinal(c(10, 15, 20, 25, 30, 35, 40), 8, 30, 42))
print(phi(-60000, 70000, 286, 308))
print(intrinsic(c(10, 15, 20, 30, 35, 38), 0.05, 15000, -60000, 70000, 286, 308))
