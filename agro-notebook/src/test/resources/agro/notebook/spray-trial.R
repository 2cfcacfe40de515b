# Values of the invented spray trial, computed apart from the library.
# Run from this folder: Rscript spray-trial.R > spray-trial.csv
vale <- "../../../../../../demo-data/osmere-vale/"
counts <- read.csv(paste0(vale, "trial-counts.csv"), comment.char = "#")
counts$treatment[counts$treatment == "C single ful"] <- "C single full"
slip <- counts$plot == 404 & counts$date == "2026-05-22" & counts$plant == 9
stopifnot(counts$larvae[slip] == 60)
counts$larvae[slip] <- 6
counts <- counts[!is.na(counts$larvae), ]
plots <- aggregate(larvae ~ plot + block + treatment + date, counts, mean)
say <- function(name, value) cat(name, ",", sprintf("%.10g", value), "\n", sep = "")

cat("# invented data; computed with", R.version.string, "by spray-trial.R\n")
cat("name,value\n")
day <- subset(plots, date == "2026-05-22")
day$block <- factor(day$block)
fit <- aov(log10(larvae + 1) ~ block + treatment, day)
table <- summary(fit)[[1]]
say("log F", table["treatment", "F value"])
say("log block F", table["block      ", "F value"])
say("log residual mean square", table["Residuals", "Mean Sq"])
say("smallest significant difference",
    qtukey(0.95, 6, 20) * sqrt(table["Residuals", "Mean Sq"] / 5))
means <- tapply(log10(day$larvae + 1), day$treatment, mean)
for (name in names(means)) say(paste("mean", name), 10^means[[name]] - 1)
say("log shapiro W", shapiro.test(residuals(fit))$statistic)
raw <- aov(larvae ~ block + treatment, day)
say("raw F", summary(raw)[[1]]["treatment", "F value"])
say("raw bartlett", bartlett.test(larvae ~ treatment, data.frame(larvae = residuals(raw), treatment = day$treatment))$statistic)

total <- function(name, on) sum(counts$larvae[counts$treatment == name & counts$date == on])
before <- "2026-05-18"
for (name in setdiff(unique(plots$treatment), "A untreated"))
  say(paste("henderson tilton day 3", name),
      100 * (1 - total(name, "2026-05-22") * total("A untreated", before) /
               (total(name, before) * total("A untreated", "2026-05-22"))))

area <- function(one) {
  days <- as.numeric(as.Date(one$date))
  one <- one[order(days), ]
  days <- sort(days)
  sum(diff(days) * (head(one$larvae, -1) + tail(one$larvae, -1)) / 2)
}
load <- sapply(split(plots, plots$plot), area)
yield <- read.csv(paste0(vale, "trial-yield.csv"), comment.char = "#")
yield$load <- load[as.character(yield$plot)]
yield$tonnes <- (yield$first_kg + yield$second_kg) / yield$area * 10
yield$block <- factor(yield$block)
line <- lm(tonnes ~ block + load, yield)
say("mean load A untreated", mean(yield$load[yield$treatment == "A untreated"]))
say("slope", coef(line)[["load"]])
say("slope low", confint(line)["load", 1])
say("slope high", confint(line)["load", 2])
price <- (yield$first_kg * 0.42 + yield$second_kg * 0.19) / yield$area * 10000
gain <- price[yield$treatment == "E double full"] - price[yield$treatment == "A untreated"] - 168
say("net gain E double full", mean(gain))
say("net gain low", t.test(gain)$conf.int[1])
say("net gain high", t.test(gain)$conf.int[2])
