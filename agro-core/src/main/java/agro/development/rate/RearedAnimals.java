package agro.development.rate;

import agro.report.InputProblem;
import agro.report.SourceLocation;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Animals of one cabinet with the same record. Rearings are looked at now and then, often once a
 * day, so a development ended between two looks.
 *
 * @param cabinet name of the cabinet, empty when none is given
 * @param setCelsius temperature to which the cabinet was set
 * @param measuredCelsius temperature that was measured inside, if it was; fits use it then
 * @param fromDays day of the last look at which they were not yet developed
 * @param toDays day of the first look at which they were developed; infinite for other fates
 * @param fate what became of them
 * @param animals how many
 */
public record RearedAnimals(
    String cabinet,
    double setCelsius,
    OptionalDouble measuredCelsius,
    double fromDays,
    double toDays,
    RearingFate fate,
    int animals) {

  /**
   * Checks all figures.
   *
   * @throws InputProblem for a figure that no rearing has
   */
  public RearedAnimals {
    Objects.requireNonNull(cabinet, "cabinet");
    RearingChecks.celsius(setCelsius, SourceLocation.NONE);
    measuredCelsius.ifPresent(value -> RearingChecks.celsius(value, SourceLocation.NONE));
    RearingChecks.interval(fromDays, toDays, SourceLocation.NONE);
    RearingChecks.count(animals, SourceLocation.NONE);
    if ((fate == RearingFate.DEVELOPED) != Double.isFinite(toDays)) {
      throw InputProblem.of("animals of the fate " + fate + " have " + toDays + " as day of it")
          .expected("a day for developed animals and none for others")
          .because("only a development that was seen has an end")
          .mend("use the method of this type that is named after the fate");
    }
  }

  /**
   * Animals whose development was seen.
   *
   * @param cabinet name of the cabinet
   * @param celsius temperature of the cabinet
   * @param fromDays last look before
   * @param toDays first look after
   * @param animals how many
   * @return the record
   */
  public static RearedAnimals developed(
      String cabinet, double celsius, double fromDays, double toDays, int animals) {
    return new RearedAnimals(
        cabinet, celsius, OptionalDouble.empty(), fromDays, toDays, RearingFate.DEVELOPED, animals);
  }

  /**
   * Animals that were alive and not yet developed at the end.
   *
   * @param cabinet name of the cabinet
   * @param celsius temperature of the cabinet
   * @param lastDay last look
   * @param animals how many
   * @return the record
   */
  public static RearedAnimals alive(String cabinet, double celsius, double lastDay, int animals) {
    return censored(cabinet, celsius, lastDay, RearingFate.ALIVE, animals);
  }

  /**
   * Animals that died before they had developed.
   *
   * @param cabinet name of the cabinet
   * @param celsius temperature of the cabinet
   * @param lastDay last look at which they lived
   * @param animals how many
   * @return the record
   */
  public static RearedAnimals died(String cabinet, double celsius, double lastDay, int animals) {
    return censored(cabinet, celsius, lastDay, RearingFate.DIED, animals);
  }

  private static RearedAnimals censored(
      String cabinet, double celsius, double lastDay, RearingFate fate, int animals) {
    return new RearedAnimals(
        cabinet, celsius, OptionalDouble.empty(), lastDay, Double.POSITIVE_INFINITY, fate, animals);
  }

  /**
   * These animals with the temperature that was measured in the cabinet.
   *
   * @param celsius the temperature
   * @return a new record
   */
  public RearedAnimals withMeasured(double celsius) {
    return new RearedAnimals(
        cabinet, setCelsius, OptionalDouble.of(celsius), fromDays, toDays, fate, animals);
  }

  /** The same record for another number of animals. */
  RearedAnimals times(int count) {
    return new RearedAnimals(cabinet, setCelsius, measuredCelsius, fromDays, toDays, fate, count);
  }

  /**
   * The temperature that a fit uses.
   *
   * @return the measured one if there is one, else the set one, °C
   */
  public double celsius() {
    return measuredCelsius.orElse(setCelsius);
  }
}
