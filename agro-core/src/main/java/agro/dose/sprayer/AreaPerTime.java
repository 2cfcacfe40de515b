package agro.dose.sprayer;

import agro.report.InputProblem;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.Numbers;
import agro.units.Unit;
import agro.units.WorkTime;
import agro.units.WorkTimeUnit;

/**
 * An area that is worked in a time.
 *
 * @param squareMetresPerSecond area per time in m²/s, finite and above zero
 */
public record AreaPerTime(double squareMetresPerSecond) implements Comparable<AreaPerTime> {

  /** Refuses numbers that no work rate has. */
  public AreaPerTime {
    if (!(squareMetresPerSecond > 0 && squareMetresPerSecond < Double.POSITIVE_INFINITY)) {
      throw InputProblem.of("a work rate of " + squareMetresPerSecond + " m²/s")
          .expected("a finite rate above zero")
          .because("the time of a job is the area divided by it")
          .mend("multiply speed and swath");
    }
  }

  /**
   * The number in stated units.
   *
   * @param area unit above the line
   * @param time unit below the line
   * @return for example hectares per hour
   */
  public double in(Unit<Area> area, Unit<WorkTime> time) {
    return area.fromBase(squareMetresPerSecond * time.toBase(1));
  }

  /**
   * Hectares per hour.
   *
   * @return km/h × m ÷ 10
   */
  public double hectaresPerHour() {
    return in(AreaUnit.HECTARE, WorkTimeUnit.HOUR);
  }

  /**
   * Hectares per minute.
   *
   * @return km/h × m ÷ 600
   */
  public double hectaresPerMinute() {
    return in(AreaUnit.HECTARE, WorkTimeUnit.MINUTE);
  }

  /**
   * Acres per hour.
   *
   * @return mph × ft ÷ 8.25
   */
  public double acresPerHour() {
    return in(AreaUnit.ACRE, WorkTimeUnit.HOUR);
  }

  /**
   * The time for an area.
   *
   * @param area the area
   * @return area ÷ rate
   */
  public WorkTime timeFor(Area area) {
    return new WorkTime(area.squareMetres() / squareMetresPerSecond);
  }

  @Override
  public int compareTo(AreaPerTime other) {
    return Double.compare(squareMetresPerSecond, other.squareMetresPerSecond);
  }

  @Override
  public String toString() {
    return Numbers.significant(hectaresPerHour(), 4) + " ha/h";
  }
}
