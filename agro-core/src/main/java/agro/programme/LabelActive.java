package agro.programme;

import agro.dose.Strength;
import agro.report.InputProblem;
import java.util.Objects;
import java.util.Optional;

/**
 * One active ingredient of a product.
 *
 * @param name common name, the same in all label records
 * @param group number of its mode-of-action group as the label prints it; nothing if not recorded
 * @param content how much of it the product holds; nothing if not recorded
 */
public record LabelActive(String name, Optional<String> group, Optional<Strength> content) {

  /** Refuses an active ingredient without a name. */
  public LabelActive {
    name = name.strip();
    group = group.map(String::strip);
    Objects.requireNonNull(content, "content");
    if (name.isEmpty()) {
      throw InputProblem.of("an active ingredient without a name")
          .expected("the common name that the label prints")
          .because("uses of one active ingredient are added up over all products that hold it")
          .mend("copy the name from the label");
    }
  }

  /**
   * An active ingredient with group and content.
   *
   * @param name common name
   * @param group number of the group, for example {@code "28"}
   * @param content strength of the product in it, for example {@code "200 g/L"}
   * @return the ingredient
   */
  public static LabelActive of(String name, String group, String content) {
    return new LabelActive(name, Optional.of(group), Optional.of(Strength.parse(content)));
  }

  /**
   * The main number of the group, without the letter of a sub-group.
   *
   * @return for example {@code "4"} for 4A and {@code "N-1"} for N-1B; groups of unknown mode such
   *     as UN stay as they are; nothing if the group is not recorded
   */
  public Optional<String> groupNumber() {
    return group.map(
        text -> {
          int end = text.length();
          while (end > 0 && Character.isLetter(text.charAt(end - 1))) {
            end--;
          }
          boolean numbered = end > 0 && Character.isDigit(text.charAt(end - 1));
          return numbered ? text.substring(0, end) : text;
        });
  }

  @Override
  public String toString() {
    return name + group.map(number -> " (group " + number + ")").orElse("");
  }
}
