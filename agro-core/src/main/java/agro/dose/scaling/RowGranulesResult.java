package agro.dose.scaling;

import agro.dose.ProductPerRowLength;
import agro.units.Length;
import agro.working.Working;
import java.util.Objects;

/**
 * A dose along the row.
 *
 * @param perMetre product per length of row
 * @param rowPerHectare length of row on a hectare
 * @param working the steps
 */
public record RowGranulesResult(ProductPerRowLength perMetre, Length rowPerHectare, Working working)
    implements ScalingResult {

  /** Refuses nulls. */
  public RowGranulesResult {
    Objects.requireNonNull(perMetre, "perMetre");
    Objects.requireNonNull(rowPerHectare, "rowPerHectare");
    Objects.requireNonNull(working, "working");
  }
}
