package agro.development;

import agro.weather.curve.CurveDay;
import java.util.function.IntToDoubleFunction;

/** The degree-days of consecutive days and what each of them rests on. */
final class DayByDay {

  private final DegreeDayModel model;
  private final DegreeDayModel withoutTomorrow;
  private final double[] valuesC;
  private final DayBasis[] bases;

  private DayByDay(DegreeDayModel model, int days) {
    this.model = model;
    withoutTomorrow = model.with(model.method().withoutTomorrow());
    valuesC = new double[days];
    bases = new DayBasis[days];
  }

  /** Days without dates, for a method that needs no day length. */
  static DayByDay of(DegreeDayModel model, double[] min, double[] max) {
    return of(model, min, max, i -> Double.NaN);
  }

  static DayByDay of(
      DegreeDayModel model, double[] min, double[] max, IntToDoubleFunction dayLengthHours) {
    var days = new DayByDay(model, min.length);
    for (int i = 0; i < min.length; i++) {
      if (Double.isNaN(min[i]) || Double.isNaN(max[i])) {
        days.put(i, Double.NaN, DayBasis.MISSING);
      } else {
        double tomorrow = i + 1 < min.length ? min[i + 1] : Double.NaN;
        var day = CurveDay.of(min[i], max[i]);
        days.count(
            i,
            model.method().needsDayLength()
                ? day.withDayLength(dayLengthHours.applyAsDouble(i))
                : day,
            tomorrow);
      }
    }
    return days;
  }

  private void count(int index, CurveDay day, double tomorrow) {
    if (!model.method().needsNextMinimum()) {
      put(index, model.degreeDaysC(day), DayBasis.COMPLETE);
    } else if (Double.isNaN(tomorrow)) {
      put(index, withoutTomorrow.degreeDaysC(day), DayBasis.WITHOUT_TOMORROW);
    } else {
      var known = day.withNextMinimum(tomorrow);
      put(
          index,
          model.degreeDaysC(known),
          known.nextMinimumIsAboveMaximum() ? DayBasis.TOMORROW_HELD : DayBasis.COMPLETE);
    }
  }

  private void put(int index, double valueC, DayBasis basis) {
    valuesC[index] = valueC;
    bases[index] = basis;
  }

  double[] valuesC() {
    return valuesC;
  }

  DayBasis[] bases() {
    return bases;
  }
}
