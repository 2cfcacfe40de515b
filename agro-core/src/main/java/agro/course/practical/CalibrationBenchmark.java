package agro.course.practical;

/** What the spray volume of each group is compared with. */
public enum CalibrationBenchmark {
  /** The target of the group, or of the class where the group states none. */
  TARGET,
  /** The mean of all groups. A few groups far off move it. */
  MEAN,
  /** The median of all groups, which a few groups far off hardly move. */
  MEDIAN
}
