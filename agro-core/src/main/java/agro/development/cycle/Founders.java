package agro.development.cycle;

import agro.report.InputProblem;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * Insects that enter a stage on a day, with which a life cycle begins.
 *
 * @param stage name of the stage that they enter
 * @param day day on which they enter it, at noon
 * @param number how many, above 0; 1 when shares alone are wanted
 */
public record Founders(String stage, LocalDate day, double number) {

  /**
   * Checks the number.
   *
   * @throws InputProblem when it is not above zero
   */
  public Founders {
    Objects.requireNonNull(stage, "stage");
    Objects.requireNonNull(day, "day");
    if (!(number > 0 && Double.isFinite(number))) {
      throw InputProblem.of(number + " founders in the stage " + stage)
          .expected("a finite number above 0")
          .because("a life cycle begins with somebody")
          .mend("give 1 to follow shares");
    }
  }

  /**
   * Founders of many days, such as the moths of a flight day by day.
   *
   * @param stage name of the stage that they enter
   * @param byDay how many enter it on each day, 0 or more; days of none are left out
   * @return one group a day, early days first
   * @throws InputProblem when a number is negative or no day has any
   */
  public static List<Founders> onDays(String stage, Map<LocalDate, Double> byDay) {
    var groups = new ArrayList<Founders>();
    new TreeMap<>(byDay)
        .forEach(
            (day, number) -> {
              if (number != 0) {
                groups.add(new Founders(stage, day, number));
              }
            });
    if (groups.isEmpty()) {
      throw InputProblem.of(byDay.size() + " days without a founder in the stage " + stage)
          .expected("a number above 0 on one day at least")
          .because("a life cycle begins with somebody")
          .mend("check that the flight lies inside these days");
    }
    return groups;
  }
}
