package agro.course.topic.degreeday;

import agro.course.ExerciseDraw;
import java.util.List;

/**
 * Half ranges of a day with the steps of (threshold − mean) / half range at which temperatures have
 * one decimal and the printed table of sine days is entered without interpolation.
 *
 * @param half half range of the day
 * @param step step of the table argument
 */
record SineDraw(double half, double step) {

  private static final List<SineDraw> CELSIUS =
      List.of(
          new SineDraw(4, 0.05),
          new SineDraw(5, 0.02),
          new SineDraw(6, 0.05),
          new SineDraw(8, 0.05),
          new SineDraw(10, 0.01));
  private static final List<SineDraw> FAHRENHEIT =
      List.of(
          new SineDraw(8, 0.05),
          new SineDraw(10, 0.01),
          new SineDraw(12, 0.05),
          new SineDraw(15, 0.02),
          new SineDraw(20, 0.01));

  static SineDraw of(ExerciseDraw draw, DegreeScale scale) {
    return draw.oneOf(scale.fahrenheit() ? FAHRENHEIT : CELSIUS);
  }

  /** Of a hot day, whose nights are not hot. */
  static SineDraw ofHotDay(ExerciseDraw draw, DegreeScale scale) {
    var all = scale.fahrenheit() ? FAHRENHEIT : CELSIUS;
    return draw.oneOf(all.subList(2, all.size()));
  }

  double argument(ExerciseDraw draw, double low, double high) {
    int least = (int) Math.round(low / step);
    int most = (int) Math.round(high / step);
    return Math.round(draw.whole(least, most) * step * 100) / 100.0;
  }
}
