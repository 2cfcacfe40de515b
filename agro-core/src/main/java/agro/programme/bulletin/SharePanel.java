package agro.programme.bulletin;

import agro.generation.FlightShare;
import agro.generation.ForecastRow;
import agro.working.Sheet;
import agro.working.Sheet.Pen;
import agro.working.Sheet.Place;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Share of a stage, or of the flight where the folder holds no stage, over the days: a light band
 * that holds the date with eight chances in ten, a darker one with five in ten, and the line of the
 * medians. A share whose date may not come this season within a band is left out of it.
 *
 * @param name what the share is of
 * @param generations lines of the forecast by generation, in the order of the shares
 */
record SharePanel(String name, Map<Integer, List<ForecastRow>> generations, BulletinText text) {

  private static final double LIGHT = 0.85;
  private static final double DARK = 0.62;
  private static final Pen MEDIAN = new Pen(0.7, 0, false);

  static SharePanel of(PestBulletin pest, LocalDate asOf, BulletinText text) {
    var rows = pest.forecast().orElseThrow().rows();
    var event =
        Stream.concat(pest.ahead(asOf).stream(), rows.stream())
            .filter(row -> !row.isFlight())
            .map(ForecastRow::event)
            .findFirst();
    var generations = new TreeMap<Integer, List<ForecastRow>>();
    for (var row : rows) {
      if (row.event().equals(event.orElse("flight"))) {
        generations.computeIfAbsent(row.generation(), any -> new ArrayList<>()).add(row);
      }
    }
    generations.values().forEach(each -> each.sort((a, b) -> Double.compare(share(a), share(b))));
    return new SharePanel(event.orElseGet(() -> text.say("picture.flights")), generations, text);
  }

  private static double share(ForecastRow row) {
    return row.share().share();
  }

  private Stream<LocalDate> days() {
    return generations.values().stream()
        .flatMap(List::stream)
        .flatMap(row -> Stream.of(0.1, 0.5, 0.9).flatMap(p -> row.dates().quantile(p).stream()));
  }

  Optional<LocalDate> firstDay() {
    return days().min(LocalDate::compareTo);
  }

  Optional<LocalDate> lastDay() {
    return days().max(LocalDate::compareTo);
  }

  void draw(Sheet.Builder sheet, DateScale scale, SeasonFigure.Span panel) {
    sheet.words(
        scale.left(),
        panel.top() - 1.6,
        text.say("picture.share", "what", name),
        SeasonFigure.TITLE);
    for (var rows : generations.values()) {
      band(sheet, rows, 0.1, LIGHT, scale, panel);
      band(sheet, rows, 0.25, DARK, scale, panel);
    }
    for (var share : FlightShare.values()) {
      double y = y(share.share(), panel);
      sheet.line(scale.left(), y, scale.right(), y, SeasonFigure.HAIR);
      sheet.words(scale.left() - 1, y + 1.2, text.percent(share.share()), SeasonFigure.TICK);
    }
    for (var rows : generations.values()) {
      median(sheet, rows, scale, panel);
    }
    sheet.line(scale.left(), panel.bottom(), scale.right(), panel.bottom(), SeasonFigure.AXIS);
  }

  private static double y(double share, SeasonFigure.Span panel) {
    return panel.bottom() - panel.height() * share;
  }

  /** The area between two quantiles, over the shares for which both are days of this season. */
  private static void band(
      Sheet.Builder sheet,
      List<ForecastRow> rows,
      double tail,
      double grey,
      DateScale scale,
      SeasonFigure.Span panel) {
    var low = new ArrayList<Place>();
    var high = new ArrayList<Place>();
    for (var row : rows) {
      var from = row.dates().quantile(tail);
      var to = row.dates().quantile(1 - tail);
      if (from.isPresent() && to.isPresent()) {
        low.add(new Place(scale.middle(from.get()), y(share(row), panel)));
        high.add(new Place(scale.middle(to.get()), y(share(row), panel)));
      }
    }
    if (low.size() > 1) {
      Collections.reverse(high);
      low.addAll(high);
      sheet.shade(low, grey);
    }
  }

  private static void median(
      Sheet.Builder sheet, List<ForecastRow> rows, DateScale scale, SeasonFigure.Span panel) {
    Place before = null;
    for (var row : rows) {
      var day = row.dates().median();
      if (day.isEmpty()) {
        return;
      }
      var here = new Place(scale.middle(day.get()), y(share(row), panel));
      if (before != null) {
        sheet.line(before.x(), before.y(), here.x(), here.y(), MEDIAN);
      }
      before = here;
    }
  }
}
