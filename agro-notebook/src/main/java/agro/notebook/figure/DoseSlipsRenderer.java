package agro.notebook.figure;

import agro.course.practical.DoseSlips;
import agro.notebook.display.MimeBundle;
import agro.notebook.display.RichRenderer;

/** Shows {@link DoseSlips} with their figure above their page. */
public final class DoseSlipsRenderer implements RichRenderer<DoseSlips> {

  /** A renderer; found as a service. */
  public DoseSlipsRenderer() {}

  @Override
  public Class<DoseSlips> type() {
    return DoseSlips.class;
  }

  @Override
  public MimeBundle render(DoseSlips slips) {
    return IllustratedResult.of(DoseSlipFigure.of(slips), slips.presentation());
  }
}
