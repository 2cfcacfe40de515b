package agro.generation;

import agro.development.DegreeDayModel;
import agro.report.InputProblem;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;

/**
 * What is known of the season under way on the day of issue, and the weather it may still have.
 *
 * @param pest the pest, as it is printed
 * @param model rule for the degree-days, the one of the fit
 * @param traps visits so far; later ones than the day of issue are refused
 * @param firstDay first day of the season, from whose start the degree-days run
 * @param lastDay last day of the season; what comes later is "not this season"
 * @param asOf day of issue
 * @param known temperatures of the place from the first day on, without a gap: observed, then from
 *     a neighbour, then forecast days
 * @param members one run of days for each past year, on the scale of the place, from the day after
 *     {@code known} to the last day of the season
 * @param limits what may end the season beside want of warmth
 * @param errors how the errors of known days hang together that the place did not measure
 * @param trendOfMembers trend of the climate in °C a decade along which the past years have been
 *     moved already; 0 when they stand as they were
 */
public record SeasonUnderWay(
    String pest,
    DegreeDayModel model,
    TrapSeason traps,
    LocalDate firstDay,
    LocalDate lastDay,
    LocalDate asOf,
    DailyTemperatures known,
    List<DailyTemperatures> members,
    SeasonLimits limits,
    KnownDayErrors errors,
    double trendOfMembers) {

  /** Past years below which nothing can be said of the spread of the weather. */
  public static final int LEAST_MEMBERS = 3;

  /** Checks that the parts fit together and that nothing lies beyond the day of issue. */
  public SeasonUnderWay {
    members = List.copyOf(members);
    Objects.requireNonNull(limits, "limits");
    Objects.requireNonNull(errors, "errors");
    requireKnown(traps, asOf, known);
    var ahead = known.lastDay().plusDays(1);
    if (ahead.isAfter(lastDay)) {
      throw InputProblem.of("temperatures are known to the season's last day " + lastDay)
          .expected("a season that still has days ahead")
          .because("there is nothing left to forecast")
          .mend("choose an earlier day of issue or a later end of the season");
    }
    if (members.size() < LEAST_MEMBERS) {
      throw InputProblem.of(members.size() + " past years reach from " + ahead + " to " + lastDay)
          .expected("at least " + LEAST_MEMBERS + " past years of temperatures")
          .because("the spread of the weather ahead is taken from past years")
          .mend("give a longer log of the place, or of a station that is named as its neighbour");
    }
    for (var member : members) {
      if (member.firstDay().isAfter(ahead)
          || member.lastDay().isBefore(lastDay)
          || !member.between(ahead, lastDay).missingDays().isEmpty()) {
        throw InputProblem.of(
                "a past year runs from " + member.firstDay() + " to " + member.lastDay())
            .expected("an unbroken run of days from " + ahead + " to " + lastDay)
            .because("single days put together would understate the spread of whole seasons")
            .mend("leave that year out or fill its gaps");
      }
    }
  }

  /**
   * A season that only want of warmth may end, with past years as they were. Errors of known days
   * all go the same way within a run of days.
   *
   * @param pest the pest, as it is printed
   * @param model rule for the degree-days, the one of the fit
   * @param traps visits so far
   * @param firstDay first day of the season
   * @param lastDay last day of the season
   * @param asOf day of issue
   * @param known temperatures of the place from the first day on
   * @param members one run of days for each past year
   * @throws InputProblem when the parts do not fit together, or tell of later days
   */
  public SeasonUnderWay(
      String pest,
      DegreeDayModel model,
      TrapSeason traps,
      LocalDate firstDay,
      LocalDate lastDay,
      LocalDate asOf,
      DailyTemperatures known,
      List<DailyTemperatures> members) {
    this(
        pest,
        model,
        traps,
        firstDay,
        lastDay,
        asOf,
        known,
        members,
        SeasonLimits.NONE,
        KnownDayErrors.WIDEST,
        0);
  }

  /**
   * The same season with other limits.
   *
   * @param other what may end the season beside want of warmth
   * @return the changed season
   */
  public SeasonUnderWay with(SeasonLimits other) {
    return new SeasonUnderWay(
        pest, model, traps, firstDay, lastDay, asOf, known, members, other, errors, trendOfMembers);
  }

  /**
   * The same season with other errors of its known days.
   *
   * @param other how these errors hang together
   * @return the changed season
   */
  public SeasonUnderWay with(KnownDayErrors other) {
    return new SeasonUnderWay(
        pest, model, traps, firstDay, lastDay, asOf, known, members, limits, other, trendOfMembers);
  }

  private static void requireKnown(TrapSeason traps, LocalDate asOf, DailyTemperatures known) {
    for (var visit : traps.visits()) {
      if (visit.date().isAfter(asOf)) {
        throw InputProblem.of("a visit on " + visit.date() + " for a forecast as of " + asOf)
            .expected("visits up to the day of issue")
            .because("a forecast that has seen later counts is none")
            .mend("cut the visits with upTo(asOf)");
      }
    }
    for (var day = known.lastDay(); !day.isBefore(asOf); day = day.minusDays(1)) {
      if (known.origin(day) != DayOrigin.FORECAST && day.isAfter(asOf)) {
        throw InputProblem.of("temperatures of " + day + " for a forecast as of " + asOf)
            .expected("observed temperatures up to the day of issue, then forecast days only")
            .because("a forecast that has seen later weather is none")
            .mend("cut the temperatures with upTo(asOf)");
      }
    }
  }

  /** Degree-days of a run of days, added up from its first day. */
  static double[] sums(DegreeDayModel model, DailyTemperatures days) {
    var daily = model.degreeDaysC(days.minimaCelsius(), days.maximaCelsius());
    var sums = new double[daily.length + 1];
    for (var i = 0; i < daily.length; i++) {
      sums[i + 1] = sums[i] + daily[i];
    }
    return sums;
  }
}
