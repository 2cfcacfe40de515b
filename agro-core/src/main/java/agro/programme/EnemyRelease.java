package agro.programme;

import agro.report.InputProblem;
import java.time.LocalDate;
import java.util.Objects;

/**
 * A release of natural enemies, or a day from which they were seen at work.
 *
 * @param name unique name, such as the number of its entry in the diary
 * @param organism which natural enemy, as the table of side effects writes it
 * @param field the field
 * @param day the day
 * @param amount how many, in the words of the user; may be empty
 */
public record EnemyRelease(
    String name, String organism, String field, LocalDate day, String amount) {

  /** Refuses a release without an organism. */
  public EnemyRelease {
    name = name.strip();
    organism = organism.strip();
    field = field.strip();
    amount = amount.strip();
    Objects.requireNonNull(day, "day");
    if (organism.isEmpty()) {
      throw InputProblem.of("a release on " + day + " without an organism")
          .expected("the natural enemy, as the table of side effects writes it")
          .because("side effects differ from one natural enemy to the next")
          .mend("name the organism");
    }
  }
}
