# Writes strata.csv and satterthwaite.csv. Call: Rscript strata-and-satterthwaite.R (after mixed-values.R)
options(contrasts = c("contr.sum", "contr.poly"))
all <- read.csv("mixed-values.csv", comment.char = "#", colClasses = "character")
read <- function(set) {
  d <- all[all$set == set, ]
  d$y <- as.numeric(d$value)
  for (v in c("fixed", "other", "group", "nested")) d[[v]] <- factor(d[[v]], unique(d[[v]]))
  d
}
o <- file("strata.csv", "w")
writeLines(c("# Analysis of variance with strata: oats (split plot) and npk (blocks random, N and K fixed).",
  paste("# Computed by", R.version.string, "with aov(y ~ fixed * other + Error(group / nested)) and Error(group)."),
  "#   call: Rscript strata-and-satterthwaite.R", "# Tolerance: 1e-8 relative, 1e-7 for p.", "model,term,f,df1,df2,p"), o)
for (model in c("oats", "npk")) {
  d <- read(model)
  a <- if (model == "oats") aov(y ~ fixed * other + Error(group / nested), d) else aov(y ~ fixed * other + Error(group), d)
  for (s in summary(a)) {
    s <- s[[1]]
    terms <- trimws(rownames(s))
    for (i in which(terms != "Residuals")) writeLines(paste(model, terms[i], sprintf("%.15g", s$F[i]), s$Df[i],
      s$Df[terms == "Residuals"], sprintf("%.15g", s$P[i]), sep = ","), o)
  }
}
close(o)
d <- read("oats with gaps")
X <- model.matrix(~ fixed * other, d)
Z <- list(outer(d$group, d$group, "=="), outer(paste(d$group, d$nested), paste(d$group, d$nested), "=="), diag(nrow(d)))
parts <- function(v) {
  V <- Reduce("+", Map("*", v, Z))
  C <- chol(V); W <- backsolve(C, X, transpose = TRUE); w <- backsolve(C, d$y, transpose = TRUE)
  M <- crossprod(W); b <- solve(M, crossprod(W, w))
  list(minus = sum(log(diag(C))) + 0.5 * as.numeric(determinant(M)$modulus) + 0.5 * sum((w - W %*% b)^2),
    cov = solve(M), b = b)
}
v <- c(209.6, 113.6, 180.7)
for (i in 1:6) {
  H <- optimHess(v, function(v) parts(v)$minus, control = list(ndeps = rep(0.02, 3)))
  g <- sapply(1:3, function(k) {
    e <- replace(rep(0, 3), k, 0.01)
    (parts(v + e)$minus - parts(v - e)$minus) / 0.02
  })
  v <- v - solve(H, g)
}
A <- solve(H)
cells <- expand.grid(fixed = levels(d$fixed), other = levels(d$other))
L <- model.matrix(~ fixed * other, transform(cells, fixed = factor(fixed, levels(d$fixed)), other = factor(other, levels(d$other))))
mean_of <- function(rows) colMeans(L[rows, , drop = FALSE])
functions <- list(
  "fixed 0.0 - 0.6" = mean_of(cells$fixed == "0.0") - mean_of(cells$fixed == "0.6"),
  "other Victory - Marvellous" = mean_of(cells$other == "Victory") - mean_of(cells$other == "Marvellous"),
  "cell 0.0:Victory - 0.0:Marvellous" = L[cells$fixed == "0.0" & cells$other == "Victory", ] -
    L[cells$fixed == "0.0" & cells$other == "Marvellous", ],
  "mean 0.2" = mean_of(cells$fixed == "0.2"))
o <- file("satterthwaite.csv", "w")
writeLines(c("# Oats without five plots: estimate, standard error and Satterthwaite's degrees of freedom of combinations.",
  paste("# Computed by", R.version.string, "from the restricted likelihood, its Hessian and the slopes of variances by"),
  "#   numerical differences.  call: Rscript strata-and-satterthwaite.R",
  "# Tolerance: 1e-6 relative for estimates and errors, 1e-3 relative for degrees of freedom.",
  "combination,estimate,standardError,df"), o)
for (name in names(functions)) {
  l <- functions[[name]]
  variance <- function(v) drop(l %*% parts(v)$cov %*% l)
  g <- sapply(1:3, function(k) {
    e <- replace(rep(0, 3), k, 0.01)
    (variance(v + e) - variance(v - e)) / 0.02
  })
  writeLines(paste(name, sprintf("%.10g", sum(l * parts(v)$b)), sprintf("%.10g", sqrt(variance(v))),
    sprintf("%.8g", 2 * variance(v)^2 / drop(g %*% A %*% g)), sep = ","), o)
}
close(o)
