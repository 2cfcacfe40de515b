package agro.programme.bulletin;

import agro.working.Sheet;
import agro.working.Sheet.Align;
import agro.working.Sheet.Pen;
import agro.working.Sheet.Place;
import java.util.List;

/** Catch of a trap and night, each column as wide as the days it was counted over. */
final class CatchPanel {

  private static final double[] STEPS = {1, 2, 5, 10};
  private static final Pen OUTLINE = new Pen(0.25, 0.2, false);
  private static final Pen BROKEN = new Pen(0.4, 0.3, true);
  private static final Sheet.Type SIGN = new Sheet.Type(3.4, true, Align.MIDDLE);
  private static final double COLUMN_GREY = 0.72;

  private CatchPanel() {}

  static void draw(
      Sheet.Builder sheet,
      List<CatchSpan> spans,
      DateScale scale,
      SeasonFigure.Span panel,
      BulletinText text) {
    sheet.words(scale.left(), panel.top() - 1.6, text.say("picture.catch"), SeasonFigure.TITLE);
    double most =
        niceAbove(
            spans.stream().mapToDouble(each -> each.perTrapNight().orElse(0)).max().orElse(0));
    for (int i = 0; i <= 2; i++) {
      double y = panel.bottom() - panel.height() * i / 2;
      sheet.line(scale.left(), y, scale.right(), y, SeasonFigure.HAIR);
      double value = most * i / 2;
      sheet.words(
          scale.left() - 1,
          y + 1.2,
          text.number(value, value == Math.rint(value) ? 0 : most < 1 ? 2 : 1),
          SeasonFigure.TICK);
    }
    for (var span : spans) {
      column(sheet, span, scale, panel, most);
    }
    sheet.line(scale.left(), panel.bottom(), scale.right(), panel.bottom(), SeasonFigure.AXIS);
  }

  private static void column(
      Sheet.Builder sheet, CatchSpan span, DateScale scale, SeasonFigure.Span panel, double most) {
    double left = scale.at(span.from());
    double right = scale.at(span.to());
    double middle = (left + right) / 2;
    if (span.perTrapNight().isEmpty()) {
      sheet.line(left, panel.bottom() - 1.2, right, panel.bottom() - 1.2, BROKEN);
      sheet.words(middle, panel.bottom() - 2, "?", SIGN);
      return;
    }
    double height = panel.height() * span.perTrapNight().getAsDouble() / most;
    double top = panel.bottom() - height;
    if (height > 0) {
      sheet.shade(
          List.of(
              new Place(left, panel.bottom()),
              new Place(left, top),
              new Place(right, top),
              new Place(right, panel.bottom())),
          COLUMN_GREY);
      sheet.box(left, top, right - left, height, OUTLINE);
    }
    if (span.atLeast()) {
      sheet.words(middle, top - 0.6, "+", SIGN);
    }
  }

  /** The next number of the form 1, 2 or 5 times a power of ten that is not smaller. */
  static double niceAbove(double value) {
    if (!(value > 0)) {
      return 1;
    }
    double power = Math.pow(10, Math.floor(Math.log10(value)));
    for (double step : STEPS) {
      if (step * power >= value) {
        return step * power;
      }
    }
    return STEPS[STEPS.length - 1] * power;
  }
}
