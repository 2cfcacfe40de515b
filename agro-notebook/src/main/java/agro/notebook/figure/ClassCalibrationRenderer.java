package agro.notebook.figure;

import agro.course.practical.ClassCalibration;
import agro.notebook.display.MimeBundle;
import agro.notebook.display.RichRenderer;

/** Shows a {@link ClassCalibration} with its figure above its page. */
public final class ClassCalibrationRenderer implements RichRenderer<ClassCalibration> {

  /** A renderer; found as a service. */
  public ClassCalibrationRenderer() {}

  @Override
  public Class<ClassCalibration> type() {
    return ClassCalibration.class;
  }

  @Override
  public MimeBundle render(ClassCalibration result) {
    return IllustratedResult.of(ClassCalibrationFigure.of(result), result.presentation());
  }
}
