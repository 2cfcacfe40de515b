package agro.dose;

import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;
import java.util.Objects;

/**
 * A rate that was turned into another kind, with its steps and cautions.
 *
 * @param from rate of the label
 * @param to rate of the other kind; a range where the label states one
 * @param working the steps
 */
public record ConvertedRate(ProductRate from, ProductRate to, Working working)
    implements Presentable {

  /** Refuses nulls. */
  public ConvertedRate {
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    Objects.requireNonNull(working, "working");
  }

  @Override
  public Presentation presentation() {
    return Presentation.titled(working.title())
        .fact("Label", from.toString())
        .fact("That is", AmountPrint.shown(to))
        .working(working)
        .build();
  }
}
