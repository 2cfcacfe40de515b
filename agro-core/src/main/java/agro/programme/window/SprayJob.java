package agro.programme.window;

import agro.dose.sprayer.AreaPerTime;
import agro.report.InputProblem;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.Numbers;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.units.WorkTime;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;
import java.util.Objects;

/**
 * The hours that a treatment takes: area over work rate, fillings and getting ready.
 *
 * @param area area to be treated, above 0
 * @param rate area in a time while it sprays, turns included
 * @param fills number of fillings, 0 or more
 * @param fillTime time for one filling, way to the water included
 * @param otherTime getting ready, driving between fields, cleaning
 */
public record SprayJob(
    Area area, AreaPerTime rate, int fills, WorkTime fillTime, WorkTime otherTime)
    implements Presentable {

  private static final double SECONDS = 3600;

  /** Refuses jobs that take no time. */
  public SprayJob {
    Objects.requireNonNull(rate, "rate");
    if (!(area.squareMetres() > 0) || !(rate.squareMetresPerSecond() > 0) || fills < 0) {
      throw InputProblem.of(area + " at " + rate + " with " + fills + " fillings")
          .expected("an area and a work rate above 0, and 0 fillings or more")
          .because("the hours of the job are area over work rate, and fillings")
          .mend("look at the area and at the work rate");
    }
  }

  /**
   * A job without fillings.
   *
   * @param area area to be treated
   * @param rate area in a time
   * @return the job
   */
  public static SprayJob of(Area area, AreaPerTime rate) {
    return new SprayJob(area, rate, 0, new WorkTime(0), new WorkTime(0));
  }

  /**
   * A job at a work rate in hectares per hour.
   *
   * @param area area to be treated
   * @param hectaresPerHour work rate
   * @return the job
   */
  public static SprayJob of(Area area, double hectaresPerHour) {
    return of(area, new AreaPerTime(hectaresPerHour * 10_000 / SECONDS));
  }

  /**
   * The same job with fillings.
   *
   * @param number number of fillings
   * @param time time for one
   * @return a new job
   */
  public SprayJob withFills(int number, WorkTime time) {
    return new SprayJob(area, rate, number, time, otherTime);
  }

  /**
   * The same job with as many fillings as its water needs.
   *
   * @param tank what one filling holds, above 0
   * @param volume water for the area
   * @param time time for one filling
   * @return a new job
   */
  public SprayJob filling(Volume tank, VolumePerArea volume, WorkTime time) {
    double loads = volume.litresPerHectare() * area.in(AreaUnit.HECTARE) / tank.litres();
    if (!(loads > 0) || Double.isInfinite(loads)) {
      throw InputProblem.of("a tank of " + tank + " for " + volume)
          .expected("a tank and a volume above 0")
          .because("fillings are water over tank")
          .mend("look at the tank and at the water");
    }
    return withFills((int) Math.ceil(loads - 1e-9), time);
  }

  /**
   * The same job with other time.
   *
   * @param time getting ready, driving between fields, cleaning
   * @return a new job
   */
  public SprayJob withOther(WorkTime time) {
    return new SprayJob(area, rate, fills, fillTime, time);
  }

  /**
   * Hours of the whole job.
   *
   * @return above 0
   */
  public double hours() {
    double seconds =
        rate.timeFor(area).seconds() + fills * fillTime.seconds() + otherTime.seconds();
    return seconds / SECONDS;
  }

  /**
   * The steps to the hours.
   *
   * @return area over rate, fillings, and their sum
   */
  public Working working() {
    double spraying = rate.timeFor(area).seconds() / SECONDS;
    return Working.of("Hours of the job")
        .step("spraying", "area / work rate", areaWords() + " / " + rate, hours(spraying))
        .step(
            "filling",
            "number × time",
            fills + " × " + fillTime,
            hours(fills * fillTime.seconds() / SECONDS))
        .step("all", "spraying + filling + other", "other: " + otherTime, hours(hours()));
  }

  private String areaWords() {
    return Numbers.plain(area.in(AreaUnit.HECTARE)) + "\u00a0ha";
  }

  private static String hours(double hours) {
    return Numbers.fixed(hours, 2) + "\u00a0h";
  }

  @Override
  public Presentation presentation() {
    return Presentation.titled("Hours of the job").working(working()).build();
  }

  @Override
  public String toString() {
    return hours(hours()) + " for " + areaWords();
  }
}
