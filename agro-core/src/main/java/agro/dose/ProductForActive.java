package agro.dose;

import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;
import java.util.Objects;

/**
 * The rate of product that holds a rate of active ingredient, with its steps and cautions.
 *
 * @param asked rate of active ingredient, strength and state
 * @param product rate of product; a range where the rate of active ingredient is one
 * @param working the steps
 */
public record ProductForActive(StrengthConversion asked, ProductPerArea product, Working working)
    implements Presentable {

  /** Refuses nulls. */
  public ProductForActive {
    Objects.requireNonNull(asked, "asked");
    Objects.requireNonNull(product, "product");
    Objects.requireNonNull(working, "working");
  }

  @Override
  public Presentation presentation() {
    return Presentation.titled(working.title())
        .fact("Active ingredient", asked.rate().toString())
        .fact("Content", asked.strength().toString())
        .fact("Product", AmountPrint.shown(product))
        .working(working)
        .build();
  }
}
