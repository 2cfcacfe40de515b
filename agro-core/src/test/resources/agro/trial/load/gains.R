# Net gains against the control, for gains.csv. Rscript gains.R > gains.csv
control <- c(11900, 12400, 11100, 12950, 12050)
treated <- c(13100, 13350, 12600, 13500, 13400)
cost <- 160
within <- t.test(treated, control, paired = TRUE)
apart <- t.test(treated, control)
cat("# Net gain of a treatment over the control, invented values, by base R", paste(R.version$major, R.version$minor, sep = "."), "t.test (gains.R):\n")
cat("# paired within blocks, and two samples after Satterthwaite; extra cost 160. Tolerance: relative 1e-9.\n")
cat("case,net,low,high\n")
cat(sprintf("blocks,%.14g,%.14g,%.14g\n", within$estimate - cost, within$conf.int[1] - cost, within$conf.int[2] - cost))
cat(sprintf("no blocks,%.14g,%.14g,%.14g\n", mean(treated) - mean(control) - cost, apart$conf.int[1] - cost, apart$conf.int[2] - cost))
