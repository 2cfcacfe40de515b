package agro.working;

import java.util.List;

/** The standard lines that stand beside every figure that could hurt someone. */
public enum Caution {
  /** Label and law outrank every computed figure. */
  LABEL_FIRST("The product label and local law come first and override every figure here."),
  /** Only registered products and uses. */
  REGISTERED_USE("Use only products that are registered for this crop, this pest and this place."),
  /** Limits and waiting times of the label. */
  LIMITS_AND_INTERVALS(
      "Keep the label's maximum dose, number of applications, interval between applications,"
          + " pre-harvest interval and re-entry interval."),
  /** Protective equipment. */
  PROTECTIVE_EQUIPMENT("Wear the protective equipment that the label asks for."),
  /** Bystanders, water and pollinators. */
  PEOPLE_WATER_BEES("Keep people, water and bees out of the spray."),
  /** Advice from a person who answers for it. */
  LICENSED_ADVISER("Ask a licensed adviser before you act on a computed figure.");

  /** The heading under which the lines are printed. */
  public static final String HEADING = "Before you use these figures";

  private final String line;

  Caution(String line) {
    this.line = line;
  }

  /**
   * The caution as it is printed.
   *
   * @return one sentence with its full stop
   */
  public String line() {
    return line;
  }

  /**
   * All cautions in the order of print, for results about doses, mixes, intervals and programmes.
   *
   * @return an immutable list
   */
  public static List<Caution> all() {
    return List.of(values());
  }
}
