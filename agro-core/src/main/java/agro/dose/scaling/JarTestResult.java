package agro.dose.scaling;

import agro.dose.DoseFinding;
import agro.dose.ProductAmount;
import agro.working.Working;
import java.util.List;
import java.util.Objects;

/**
 * Amounts for a jar test.
 *
 * @param parts products in the order of mixing
 * @param findings amounts that are too small to be measured
 * @param working the steps
 */
public record JarTestResult(List<Part> parts, List<DoseFinding> findings, Working working)
    implements ScalingResult {

  /**
   * One product.
   *
   * @param name name of the product
   * @param amount product for the jar
   */
  public record Part(String name, ProductAmount amount) {
    /** Refuses nulls. */
    public Part {
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(amount, "amount");
    }
  }

  /** Copies the lists. */
  public JarTestResult {
    parts = List.copyOf(parts);
    findings = List.copyOf(findings);
    Objects.requireNonNull(working, "working");
  }
}
