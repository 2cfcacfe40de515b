package agro.dose.sprayer;

import agro.dose.SprayVolume;
import agro.report.InputProblem;
import agro.units.Area;
import agro.units.Numbers;
import agro.units.Unit;
import agro.units.Volume;
import agro.units.WorkTime;
import java.util.Objects;

/**
 * The time a job takes from the number of pumps (tank loads) and the minutes for each.
 *
 * @param pumps tank loads, the last one may be a part; above zero and up to 1 000 000
 * @param perPump time to spray one full pump, above zero
 * @param perFill time to fill and mix one pump; zero if it is counted in the time above
 * @param operators people who spray at the same time, each with a pump, 1 or more
 */
public record PumpJob(double pumps, WorkTime perPump, WorkTime perFill, int operators) {

  /** More pumps than anybody sprays in a job. */
  private static final double MOST = 1_000_000;

  /** Numbers of pumps closer than this to a whole one are whole. */
  private static final double ROUNDING = 1e-9;

  /** Refuses a job of no pumps. */
  public PumpJob {
    if (!(pumps > 0 && pumps <= MOST)) {
      throw InputProblem.of("the number of pumps is " + Numbers.plain(pumps))
          .expected(
              "a number above zero and up to 1 000 000, 12.5 for twelve full pumps and a half")
          .because("the time is the number of pumps times the minutes for each")
          .mend("divide the spray for the field by the volume of the tank, and check their units");
    }
    SprayerChecks.aboveZero(
        perPump,
        "time for one pump",
        "the time of the job is the number of pumps times this",
        "time one full pump in the field");
    Objects.requireNonNull(perFill, "perFill");
    SprayerChecks.oneOrMore(
        operators, "operators", "somebody has to carry the pump", "count the people who spray");
  }

  /**
   * A job from field, spray volume and tank.
   *
   * @param field area of the field, above zero
   * @param volume spray volume per ground area
   * @param tank volume of one pump, above zero
   * @param perPump time to spray one full pump
   * @return the job for one operator, filling not counted
   */
  public static PumpJob of(Area field, SprayVolume volume, Volume tank, WorkTime perPump) {
    checkedField(field);
    SprayerChecks.aboveZero(
        tank,
        "volume of the tank",
        "the number of pumps is the spray divided by the tank",
        "read the mark on the tank");
    return new PumpJob(volume.on(field).ratioTo(tank), perPump, new WorkTime(0), 1);
  }

  /**
   * A job from field, spray volume, tank and the flow of the sprayer, which empties the tank in
   * tank ÷ flow.
   *
   * @param field area of the field, above zero
   * @param volume spray volume per ground area
   * @param tank volume of one tank, above zero
   * @param flow flow of all nozzles
   * @return the job for one operator; filling and turns not counted
   */
  public static PumpJob ofFlow(Area field, SprayVolume volume, Volume tank, SprayerFlow flow) {
    return of(
        field, volume, tank, new WorkTime(60 * tank.litres() / flow.flow().litresPerMinute()));
  }

  /**
   * A job from the pumps that people count for a unit of land, for example 10 pumps per acre.
   *
   * @param number pumps for one unit of land, above zero
   * @param land unit of land, with its place where the name has several sizes
   * @param field area of the field, above zero
   * @param perPump time to spray one full pump
   * @return the job for one operator, filling not counted
   */
  public static PumpJob ofPumpsPer(double number, Unit<Area> land, Area field, WorkTime perPump) {
    checkedField(field);
    return new PumpJob(number * field.in(land), perPump, new WorkTime(0), 1);
  }

  /**
   * The same job with the time to fill and mix.
   *
   * @param time time for each pump
   * @return a new job
   */
  public PumpJob filling(WorkTime time) {
    return new PumpJob(pumps, perPump, time, operators);
  }

  /**
   * The same job shared by several people.
   *
   * @param people people who spray at the same time
   * @return a new job
   */
  public PumpJob by(int people) {
    return new PumpJob(pumps, perPump, perFill, people);
  }

  /**
   * The time of the job.
   *
   * @return full pumps, part pump, hours of work and hours on the clock
   */
  public PumpJobTime evaluate() {
    return PumpJobTime.of(this);
  }

  /** Full pumps; a hair below a whole number counts as whole. */
  int fullPumps() {
    return (int) Math.floor(pumps + ROUNDING);
  }

  /** The share of the last pump, or 0. */
  double partPump() {
    double part = pumps - fullPumps();
    return part > ROUNDING ? part : 0;
  }

  private static void checkedField(Area field) {
    SprayerChecks.aboveZero(
        field, "area of the field", "a field without area takes no pump", "measure the field");
  }
}
