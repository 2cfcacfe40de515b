package agro.dose.tank;

import agro.dose.ProductAmount;
import java.util.Objects;

/** What a kit offers for an amount: a vessel, or a reason why none will do. */
public sealed interface VesselSuggestion {

  /**
   * The vessel that suits best.
   *
   * @param reading how the amount is read off it
   */
  record Suits(VesselReading reading) implements VesselSuggestion {
    /** Refuses null. */
    public Suits {
      Objects.requireNonNull(reading, "reading");
    }
  }

  /**
   * No vessel of the kit measures the amount well enough.
   *
   * @param target the amount
   * @param why a sentence with the error of the best vessel, and what to do
   */
  record NoneSuits(ProductAmount target, String why) implements VesselSuggestion {
    /** Refuses nulls. */
    public NoneSuits {
      Objects.requireNonNull(target, "target");
      Objects.requireNonNull(why, "why");
    }
  }
}
