# Scores made of public counts. Run here: Rscript scores.R > scores.csv
cat("# Rank tests of counts in classes, computed by base R 4.2.2 (friedman.test, kruskal.test), scores.R.\n")
cat("# OrchardSprays (Finney 1947, Probit Analysis), decrease in classes up to 10, 30, 60, above; rows as blocks.\n")
cat("# InsectSprays (Beall 1942, Biometrika 32:243-262), counts in classes up to 2, 5, 10, 15, above.\n")
cat("# Tolerance: 1e-9 relative.\n")
cat("case,name,value\n")
put <- function(case, name, value) cat(sprintf("%s,%s,%.12g\n", case, name, value))
o <- OrchardSprays
o$score <- as.integer(cut(o$decrease, c(-Inf, 10, 30, 60, Inf)))
f <- friedman.test(score ~ treatment | rowpos, o)
put("orchard", "statistic", f$statistic); put("orchard", "chance", f$p.value)
m <- tapply(ave(o$score, o$rowpos, FUN = rank), o$treatment, mean)
for (t in names(m)) put("orchard", paste("mean rank", t), m[t])
i <- InsectSprays
i$score <- as.integer(cut(i$count, c(-Inf, 2, 5, 10, 15, Inf)))
k <- kruskal.test(score ~ spray, i)
put("insects", "statistic", k$statistic); put("insects", "chance", k$p.value)
m <- tapply(rank(i$score), i$spray, mean)
for (t in names(m)) put("insects", paste("mean rank", t), m[t])
