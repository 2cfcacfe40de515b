package agro.dose.sprayer;

import agro.report.InputProblem;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.Length;
import agro.units.Numbers;
import agro.units.Speed;
import agro.units.Unit;
import agro.units.WorkTime;
import agro.units.WorkTimeUnit;
import agro.working.Caution;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;
import java.util.Objects;

/**
 * The area that a sprayer works in a time: ha/min = km/h × m ÷ 600, ha/h = km/h × m ÷ 10, ac/h =
 * mph × ft ÷ 8.25, times the share of the time in which it sprays.
 *
 * @param speed speed over ground, above zero
 * @param swath field width of one pass, above zero
 * @param sprayingShare share of the time in which it sprays, above 0 and up to 1; turns, walking
 *     back and filling are the rest
 * @param units units of print
 */
public record WorkRate(Speed speed, Length swath, double sprayingShare, SprayUnits units) {

  /** Refuses a sprayer that stands still and shares that are none. */
  public WorkRate {
    SprayerChecks.aboveZero(
        speed,
        "speed",
        "a sprayer that stands still covers nothing",
        "time a measured course at spraying speed");
    SprayerChecks.aboveZero(
        swath, "swath", "a pass without width covers nothing", "measure the swath on the ground");
    if (!(sprayingShare > 0 && sprayingShare <= 1)) {
      throw InputProblem.of(
              "the share of the time in which it sprays is " + Numbers.plain(sprayingShare))
          .expected("a share above 0 and up to 1")
          .because("the rest of the time is spent on turns, walking back and filling")
          .mend("write 70 % as 0.7, or 1 for spraying without a break");
    }
    Objects.requireNonNull(units, "units");
  }

  /**
   * The work rate without turns, in metric print.
   *
   * @param speed speed over ground
   * @param swath field width of one pass
   * @return the work rate
   */
  public static WorkRate of(Speed speed, Length swath) {
    return new WorkRate(speed, swath, 1, SprayUnits.METRIC);
  }

  /**
   * The work rate of a sprayer without turns, in metric print.
   *
   * @param speed speed over ground
   * @param layout nozzles and widths; the field width of one pass counts
   * @return the work rate
   */
  public static WorkRate ofLayout(Speed speed, SprayLayout layout) {
    return of(speed, layout.fieldWidth());
  }

  /**
   * The same work rate with turns, walking back and filling.
   *
   * @param share share of the time in which it sprays
   * @return a new work rate
   */
  public WorkRate spraying(double share) {
    return new WorkRate(speed, swath, share, units);
  }

  /**
   * The same work rate in other units.
   *
   * @param other units of print
   * @return a new work rate
   */
  public WorkRate printedIn(SprayUnits other) {
    return new WorkRate(speed, swath, sprayingShare, other);
  }

  /**
   * The area per time.
   *
   * @return area per time and steps
   */
  public Found evaluate() {
    var rate = new AreaPerTime(speed.metresPerSecond() * swath.metres() * sprayingShare);
    var working =
        Working.of("Work rate of a sprayer")
            .step(
                "area per time",
                sprayingShare < 1 ? "speed × swath × share of the time" : "speed × swath",
                units.speed(speed)
                    + " × "
                    + SprayUnits.print(swath, units.course())
                    + (sprayingShare < 1 ? " × " + Numbers.plain(sprayingShare) : ""),
                printed(rate),
                SprayerSources.VOLUME_EQUATION)
            .withCautions(Caution.all());
    return new Found(rate, working);
  }

  /**
   * The time for a field.
   *
   * @param field area of the field, above zero
   * @return area ÷ area per time
   * @throws InputProblem if the field has no area
   */
  public WorkTime timeFor(Area field) {
    SprayerChecks.aboveZero(
        field, "area of the field", "a field without area takes no time", "measure the field");
    return evaluate().rate().timeFor(field);
  }

  private String printed(AreaPerTime rate) {
    Unit<Area> land = units.smallArea() == AreaUnit.SQUARE_FOOT ? AreaUnit.ACRE : AreaUnit.HECTARE;
    return Numbers.significant(rate.in(land, WorkTimeUnit.MINUTE), 4)
        + " "
        + land.symbol()
        + "/min, "
        + Numbers.significant(rate.in(land, WorkTimeUnit.HOUR), 4)
        + " "
        + land.symbol()
        + "/h";
  }

  /**
   * A work rate that was found.
   *
   * @param rate area per time
   * @param working the steps, with cautions
   */
  public record Found(AreaPerTime rate, Working working) implements Presentable {
    @Override
    public Presentation presentation() {
      return working.presentation();
    }
  }
}
