package agro.weather.curve;

/**
 * A sine by day and a logarithmic fall by night, from sunrise to the next sunrise (Linvill 1990,
 * HortScience 25:14-16; formula from memory). With day length D in hours, lowest temperature Tn at
 * sunrise, highest temperature Tx and next minimum Tn2,
 *
 * <p>by day, t hours after sunrise: T = Tn + (Tx − Tn) sin[π t / (D + 4)], highest at t = (D + 4) /
 * 2;
 *
 * <p>by night, h hours after sunset: T = Ts − [(Ts − Tn2) / ln(24 − D)] ln h, where Ts is the
 * temperature at sunset.
 *
 * <p>The logarithm is not defined at sunset and would lift the first hour above Ts, so the first
 * hour of the night is flat: h is held at 1 or more.
 *
 * <p>On days shorter than {@value #SHORTEST_DAY} h the sun sets before the curve has reached Tx,
 * and nights of up to an hour have no fall at all; both lie outside what the curve was made for.
 * They are computed by the same formulas.
 */
public final class SineAndDecayCurve {

  /** Shortest day on which the curve reaches the highest temperature, in hours. */
  public static final double SHORTEST_DAY = 4;

  /** Longest day that leaves the night a fall, in hours. */
  public static final double LONGEST_DAY = 23;

  private static final double HOURS = 24;
  private static final double LAG = 4;

  private SineAndDecayCurve() {}

  /**
   * Temperature at a moment.
   *
   * @param day extremes, next minimum and day length, all known
   * @param hours hours since sunrise, 0 to 24
   * @return °C
   */
  public static double celsiusAt(CurveDay day, double hours) {
    double length = day.dayLengthHours();
    if (hours <= length) {
      return byDay(day, hours);
    }
    double sunset = byDay(day, length);
    double night = HOURS - length;
    double afterSunset = Math.max(1, hours - length);
    return night <= 1
        ? sunset
        : sunset - (sunset - day.endCelsius()) / Math.log(night) * Math.log(afterSunset);
  }

  private static double byDay(CurveDay day, double hours) {
    return day.minCelsius()
        + (day.maxCelsius() - day.minCelsius())
            * Math.sin(Math.PI * hours / (day.dayLengthHours() + LAG));
  }

  /**
   * Area of the curve above a threshold.
   *
   * @param day extremes, next minimum and day length, all known
   * @param celsius the threshold in °C
   * @return °C·d, never negative
   */
  public static double areaAbove(CurveDay day, double celsius) {
    if (celsius >= day.maxCelsius()) {
      return 0;
    }
    return areaByDay(day, celsius) + areaByNight(day, celsius);
  }

  /**
   * Area of the part by day above a threshold.
   *
   * @param day extremes, next minimum and day length, all known
   * @param celsius the threshold in °C
   * @return °C·d, never negative
   */
  public static double areaByDay(CurveDay day, double celsius) {
    return Math.max(0, dayArea(day, celsius) / HOURS);
  }

  /**
   * Area of the part by night above a threshold.
   *
   * @param day extremes, next minimum and day length, all known
   * @param celsius the threshold in °C
   * @return °C·d, never negative
   */
  public static double areaByNight(CurveDay day, double celsius) {
    return Math.max(0, nightArea(day, celsius) / HOURS);
  }

  /**
   * Share of the 24 hours above a threshold.
   *
   * @param day extremes, next minimum and day length, all known
   * @param celsius the threshold in °C
   * @return 0 to 1
   */
  public static double shareAbove(CurveDay day, double celsius) {
    if (celsius >= day.maxCelsius()) {
      return 0;
    }
    double hourAngles = Math.max(0, lastAngle(day, celsius) - firstAngle(day, celsius));
    double byDay = hourAngles * (day.dayLengthHours() + LAG) / Math.PI;
    return Math.min(1, (byDay + nightHours(day, celsius)) / HOURS);
  }

  /** Angle at which the rising sine passes the threshold; 0 when it begins above. */
  private static double firstAngle(CurveDay day, double celsius) {
    double rise = day.maxCelsius() - day.minCelsius();
    double above = celsius - day.minCelsius();
    if (above <= 0) {
      return 0;
    }
    // Near the top the arc sine is steep: there the angle is counted from the top.
    double fromTop = (day.maxCelsius() - celsius) / rise;
    return fromTop < 0.5
        ? 0.5 * Math.PI - 2 * Math.asin(Math.sqrt(0.5 * Math.max(0, fromTop)))
        : Math.asin(above / rise);
  }

  /** Angle at which the falling sine passes the threshold, or that of sunset. */
  private static double lastAngle(CurveDay day, double celsius) {
    double sunset = Math.PI * day.dayLengthHours() / (day.dayLengthHours() + LAG);
    return Math.min(sunset, Math.PI - firstAngle(day, celsius));
  }

  private static double dayArea(CurveDay day, double celsius) {
    double first = firstAngle(day, celsius);
    double last = lastAngle(day, celsius);
    if (last <= first) {
      return 0;
    }
    double rise = day.maxCelsius() - day.minCelsius();
    double area =
        (day.minCelsius() - celsius) * (last - first) + rise * (Math.cos(first) - Math.cos(last));
    return area * (day.dayLengthHours() + LAG) / Math.PI;
  }

  private static double nightArea(CurveDay day, double celsius) {
    double night = HOURS - day.dayLengthHours();
    double above = byDay(day, day.dayLengthHours()) - celsius;
    double flat = Math.max(0, above) * Math.min(1, night);
    if (night <= 1) {
      return flat;
    }
    double fall = fall(day, night);
    double crossing = crossing(above, fall, night);
    double until = fall >= 0 ? crossing : night;
    double from = fall >= 0 ? 1 : crossing;
    return flat + primitive(above, fall, until) - primitive(above, fall, from);
  }

  private static double nightHours(CurveDay day, double celsius) {
    double night = HOURS - day.dayLengthHours();
    double above = byDay(day, day.dayLengthHours()) - celsius;
    double flat = above >= 0 ? Math.min(1, night) : 0;
    if (night <= 1) {
      return flat;
    }
    double fall = fall(day, night);
    double crossing = crossing(above, fall, night);
    return flat + (fall >= 0 ? crossing - 1 : night - crossing);
  }

  /** Fall of the temperature for each unit of ln h; negative when the night grows warmer. */
  private static double fall(CurveDay day, double night) {
    return (byDay(day, day.dayLengthHours()) - day.endCelsius()) / Math.log(night);
  }

  /** Hours after sunset at which the night passes the threshold, held between 1 and its length. */
  private static double crossing(double above, double fall, double night) {
    if (fall == 0) {
      return above >= 0 ? night : 1;
    }
    return Math.max(1, Math.min(night, Math.exp(above / fall)));
  }

  /** Integral of above − fall ln h from 0 to h. */
  private static double primitive(double above, double fall, double hours) {
    return (above + fall - fall * Math.log(hours)) * hours;
  }
}
