package agro.course.paper;

import agro.course.ExamAid;
import agro.course.sheet.LogProbabilityPaper;
import agro.course.sheet.NormalAreaTable;
import agro.course.sheet.PrintableSheet;
import agro.course.sheet.ProbitTable;
import agro.course.sheet.SineArcTable;
import agro.course.sheet.SineTable;
import agro.course.sheet.StopLinePaper;
import agro.course.sheet.StudentTable;
import agro.course.sheet.WorkingProbitTable;

/** The printed tables and papers that exercises ask for. */
public final class PaperAids {

  private static final int CYCLES = 3;
  private static final int UNITS = 50;
  private static final double HIGHEST_TOTAL = 100;

  private PaperAids() {}

  /**
   * What is put on the table for an exercise.
   *
   * @param aid what the exercise names
   * @return a page of A4
   */
  public static PrintableSheet sheet(ExamAid aid) {
    return switch (aid) {
      case SINE_TABLE -> SineArcTable.of();
      case DEGREE_DAY_TABLE -> SineTable.of();
      case PROBIT_TABLE -> ProbitTable.of();
      case WORKING_PROBIT_TABLE -> WorkingProbitTable.of();
      case NORMAL_TABLE -> NormalAreaTable.of();
      case STUDENT_TABLE -> StudentTable.of();
      case LOG_PROBABILITY_PAPER -> LogProbabilityPaper.of(CYCLES).empty();
      case STOP_LINE_PAPER -> StopLinePaper.of(UNITS, HIGHEST_TOTAL);
    };
  }
}
