# Writes the data sets of base R that the tests of generalised linear models use.
out <- function(name, table, source) {
  con <- file(paste0(name, ".csv"), "w")
  writeLines(paste0("# ", source, "; data set of ", R.version.string, ", written by glm-data.R."), con)
  write.csv(table, con, row.names = FALSE, quote = FALSE)
  close(con)
}
out("warpbreaks", warpbreaks, "Breaks of yarn per loom, Tippett 1950, Technological Applications of Statistics")
out("esoph", esoph, "Oesophageal cancer, Breslow and Day 1980, Statistical Methods in Cancer Research 1")
out("infert", infert[, c("case", "spontaneous", "induced")], "Infertility, Trichopoulos et al. 1976, British Journal of Obstetrics and Gynaecology 83:645-650")
out("insect-sprays", InsectSprays, "Counts of insects, Beall 1942, Biometrika 32:243-262")
