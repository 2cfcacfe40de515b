# Data sets of base R in the shape of the tests. Run here: Rscript data.R
head <- function(file, lines) writeLines(paste("#", lines), file)
f <- file("repeated.csv", "w")
head(f, c("Data sets CO2 (Potvin, Lechowicz & Tardif 1990) and ChickWeight (Crowder & Hand 1990; days 0, 4 to 20)",
  "of base R 4.2.2, written by data.R. Time is the concentration or the day."))
co2 <- data.frame(set = "co2", subject = as.character(CO2$Plant),
  treatment = paste(CO2$Type, CO2$Treatment, sep = "."), time = CO2$conc, value = CO2$uptake)
k <- ChickWeight[ChickWeight$Time %in% c(0, 4, 8, 12, 16, 20), ]
chicks <- data.frame(set = "chicks", subject = as.character(k$Chick), treatment = as.character(k$Diet),
  time = k$Time, value = k$weight)
write.csv(rbind(co2, chicks), f, row.names = FALSE, quote = FALSE)
close(f)
f <- file("scores-data.csv", "w")
head(f, c("OrchardSprays (Finney 1947) and InsectSprays (Beall 1942) of base R 4.2.2 in classes, written by data.R."))
o <- data.frame(set = "orchard", block = OrchardSprays$rowpos, treatment = OrchardSprays$treatment,
  score = as.integer(cut(OrchardSprays$decrease, c(-Inf, 10, 30, 60, Inf))))
i <- data.frame(set = "insects", block = "", treatment = InsectSprays$spray,
  score = as.integer(cut(InsectSprays$count, c(-Inf, 2, 5, 10, 15, Inf))))
write.csv(rbind(o, i), f, row.names = FALSE, quote = FALSE)
close(f)
