package agro.course.topic.probit;

import agro.course.AnswerTolerance;
import agro.course.CourseWords;
import agro.course.ExerciseType;
import agro.course.MeasuredAnswer;
import agro.units.MassPerVolume;
import agro.units.MassPerVolumeUnit;
import agro.units.Unit;
import java.util.List;

/** The exercises on dose and response. */
public final class ProbitExercises {

  static final Unit<MassPerVolume> UNIT = MassPerVolumeUnit.MILLIGRAM_PER_LITRE;

  /** What printed probits with two decimals leave of a dose. */
  private static final double TABLE_SHARE = 0.01;

  /** Half a hundredth of a probit, and of the slope, times the logarithm of ten. */
  private static final double PROBITS_OF_TWO = 0.0175;

  private ProbitExercises() {}

  /**
   * The types of the first version of the generator.
   *
   * @return the types, simple ones first
   */
  public static List<ExerciseType> first() {
    return List.of(
        new ProbitOfPercent(),
        new ResistanceRatio(),
        new LineToDoses(),
        new LineThroughTwo(),
        new WorkingProbitRow(),
        new WeightedLine());
  }

  static CourseWords words(CourseWords shared) {
    return shared.in(ProbitExercises.class, "probit");
  }

  /** A dose from two printed probits: the flatter the line, the more their last digits matter. */
  static MeasuredAnswer<MassPerVolume> dose(double milligramsPerLitre, double slope) {
    double share = Math.max(TABLE_SHARE, PROBITS_OF_TWO / Math.abs(slope));
    return new MeasuredAnswer<>(
        MassPerVolume.of(milligramsPerLitre, UNIT),
        UNIT,
        new AnswerTolerance(share * milligramsPerLitre, AnswerTolerance.Reason.PRINTED_TABLE));
  }

  /** A dose that came from printed probits. */
  static MeasuredAnswer<MassPerVolume> dose(double milligramsPerLitre) {
    return new MeasuredAnswer<>(
        MassPerVolume.of(milligramsPerLitre, UNIT),
        UNIT,
        new AnswerTolerance(
            TABLE_SHARE * milligramsPerLitre, AnswerTolerance.Reason.PRINTED_TABLE));
  }
}
