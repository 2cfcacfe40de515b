package agro.course.practical;

import agro.dose.ProductPerArea;
import java.util.Objects;

/**
 * A slip with its size in a situation and its name in a language.
 *
 * @param kind the slip
 * @param ratio dose given ÷ dose intended
 * @param name what goes wrong, with the figures of the situation where its size depends on them
 */
public record DoseSlip(CommonSlip kind, double ratio, String name) {

  /** Refuses nulls. */
  public DoseSlip {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(name, "name");
  }

  /**
   * Whether too little is given.
   *
   * @return true below the intended dose
   */
  public boolean isTooLittle() {
    return ratio < 1;
  }

  /**
   * The dose that is given.
   *
   * @param intended dose that was meant
   * @return intended × ratio; a range stays a range
   */
  public ProductPerArea given(ProductPerArea intended) {
    return intended.withAmount(intended.amount().times(ratio));
  }
}
