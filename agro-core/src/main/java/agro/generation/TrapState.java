package agro.generation;

import java.util.Locale;

/** How a trap was found at a visit. Zero, missing and full are three different things. */
public enum TrapState {
  /** The trap worked; its count, zero included, is the catch since the visit before. */
  WORKING,
  /** The trap had failed (blown down, dry, taken); nothing is known of the nights since. */
  FAILED,
  /** The trap was full; its count is the least that flew. */
  FULL;

  /**
   * The state in words.
   *
   * @return the name in lower case
   */
  public String words() {
    return name().toLowerCase(Locale.ROOT);
  }
}
