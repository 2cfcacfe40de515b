package agro.development.rate;

import agro.source.Reference;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** Rate curves, fits and intervals as a person reads them. */
final class RatePages {

  private static final int DIGITS = 5;
  private static final int MOST_DECIMALS = 15;

  private RatePages() {}

  /** A number with so many significant digits, in powers of ten where it is very small. */
  static String significant(double value, int digits) {
    if (!Double.isFinite(value)) {
      return Numbers.plain(value);
    }
    var rounded = BigDecimal.valueOf(value).round(new MathContext(digits, RoundingMode.HALF_EVEN));
    double size = Math.abs(value);
    return size > 0 && (size < 1e-3 || size >= 1e9)
        ? String.format(Locale.ROOT, "%." + (digits - 1) + "e", rounded)
        : rounded.toPlainString();
  }

  static Presentation curve(RateCurve curve) {
    var page =
        Presentation.titled("Rate of development, " + curve.model().words())
            .fact("Formula", curve.model().formula())
            .fact("Meant for", curve.model().meantFor());
    if (curve.model().usesArrheniusConstants()) {
      page.fact("Constants", curve.constants().toString());
    }
    return page.table(parameters(curve, MOST_DECIMALS - 3))
        .table(derived(curve))
        .sources(curve.model().sources())
        .build();
  }

  private static ResultTable parameters(RateCurve curve, int digits) {
    var rows = new ArrayList<List<Cell>>();
    for (int j = 0; j < curve.parameters().size(); j++) {
      var parameter = curve.model().parameters().get(j);
      rows.add(
          List.of(
              Cell.text(parameter.symbol()),
              Cell.text(significant(curve.parameters().get(j), digits)),
              Cell.text(parameter.unit()),
              Cell.text(parameter.meaning())));
    }
    return ResultTable.of(
        "Parameters",
        List.of(Column.of("Symbol"), Column.of("Value"), Column.of("Unit"), Column.of("Meaning")),
        rows);
  }

  private static ResultTable derived(RateCurve curve) {
    var rows = new ArrayList<List<Cell>>();
    for (var point : DerivedPoint.values()) {
      var value = curve.derived(point);
      boolean of =
          value.isPresent()
              || (point != DerivedPoint.THERMAL_CONSTANT
                  && point != DerivedPoint.INTRINSIC_OPTIMUM);
      if (of) {
        rows.add(
            List.of(
                Cell.text(point.words()),
                Cell.text(orNone(value)),
                Cell.text(value.isPresent() ? point.unit() : "")));
      }
    }
    return ResultTable.of(
        "What follows from the curve",
        List.of(Column.of("Point"), Column.of("Value"), Column.of("Unit")),
        rows);
  }

  /** A model that never reaches zero has no threshold, which is not an unknown one. */
  static String orNone(OptionalDouble value) {
    return value.isPresent() ? significant(value.getAsDouble(), DIGITS) : "none";
  }

  static Presentation data(RearingData data) {
    var rows = new ArrayList<List<Cell>>();
    for (var mean : data.means()) {
      rows.add(
          List.of(
              Cell.text(mean.cabinet()),
              Cell.number(mean.setCelsius(), 2),
              number(mean.measuredCelsius(), 2),
              mean.meanDays().isPresent()
                  ? Cell.number(mean.meanDays().getAsDouble(), 2)
                  : Cell.text("no development"),
              mean.animals().isPresent()
                  ? Cell.number(mean.animals().getAsInt(), 0)
                  : Cell.notKnown(),
              number(mean.deviationDays(), 2),
              Cell.number(mean.rate(), 5)));
    }
    var table =
        ResultTable.of(
            "Means of the cabinets",
            List.of(
                Column.of("Cabinet"),
                Column.of("Set", "°C"),
                Column.of("Measured", "°C"),
                Column.of("Mean duration", "d"),
                Column.of("Animals"),
                Column.of("Standard deviation", "d"),
                Column.of("Rate", "1/d")),
            rows);
    return Presentation.titled("Rearing: " + data.subject())
        .table(table)
        .part(Presentation.of(data.report()))
        .build();
  }

  private static Cell number(OptionalDouble value, int decimals) {
    return value.isPresent() ? Cell.number(value.getAsDouble(), decimals) : Cell.notKnown();
  }

  static Presentation fit(RateFit fit) {
    var curve = fit.curve();
    var criteria = fit.criteria();
    var page =
        Presentation.titled(curve.model().words() + ", fitted to " + fit.data().subject())
            .fact("Formula", curve.model().formula())
            .fact("Fitted by", fit.fitting().toString())
            .fact("Rates and parameters", fit.points().size() + " and " + fit.freeParameters())
            .fact("Sum of squares", significant(fit.sumOfSquares(), 10))
            .fact("AIC", Numbers.fixed(criteria.aic(), 2))
            .fact("AICc", corrected(criteria.aicCorrected()))
            .fact("BIC", Numbers.fixed(criteria.bic(), 2))
            .fact("Search", searched(fit));
    fit.dispersion()
        .ifPresent(
            value ->
                page.fact("Scatter of durations", significant(value, 4))
                    .fact("Log likelihood", Numbers.fixed(fit.logLikelihood().orElseThrow(), 4)));
    if (curve.model().usesArrheniusConstants()) {
      page.fact("Constants", curve.constants().toString());
    }
    page.table(fitted(fit)).table(points(fit));
    fit.remarks().forEach(remark -> page.paragraph(sentence(remark.text())));
    fit.line().ifPresent(line -> page.working(line.working()));
    return page.sources(sources(fit)).build();
  }

  private static List<Reference> sources(RateFit fit) {
    var sources = new ArrayList<>(fit.curve().model().sources());
    sources.add(RateSources.BATES_WATTS_1988);
    sources.add(RateSources.BURNHAM_ANDERSON_2002);
    return sources;
  }

  static String corrected(OptionalDouble value) {
    return value.isPresent() ? Numbers.fixed(value.getAsDouble(), 2) : "not defined";
  }

  static String sentence(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1) + ".";
  }

  private static String searched(RateFit fit) {
    var found = fit.found();
    return (found.converged() ? "converged" : "not converged")
        + "; "
        + found.atBest()
        + " of "
        + found.followed()
        + " starts that were followed ended at the best optimum, "
        + found.iterations()
        + " steps in all";
  }

  private static ResultTable fitted(RateFit fit) {
    var curve = fit.curve();
    double low = fit.points().stream().mapToDouble(RatePoint::celsius).min().orElse(0);
    double high = fit.points().stream().mapToDouble(RatePoint::celsius).max().orElse(0);
    int digits = Math.max(DIGITS, curve.digitsNeeded(low, high));
    var rows = new ArrayList<List<Cell>>();
    for (int j = 0; j < curve.parameters().size(); j++) {
      var parameter = curve.model().parameters().get(j);
      rows.add(
          row(
              parameter.symbol(),
              significant(curve.parameters().get(j), digits),
              fit.fitting().fixed().containsKey(j)
                  ? "fixed"
                  : error(fit.standardError(parameter.symbol())),
              parameter.unit(),
              parameter.meaning()));
    }
    for (var point : DerivedPoint.values()) {
      var value = curve.derived(point);
      if (value.isPresent() || point == DerivedPoint.LOWER_THRESHOLD) {
        rows.add(
            row(
                point.symbol(),
                orNone(value),
                value.isPresent() ? error(fit.standardError(point)) : "",
                value.isPresent() ? point.unit() : "",
                point.words()));
      }
    }
    return ResultTable.of(
            "Parameters and what follows from them",
            List.of(
                Column.of("Symbol"),
                Column.of("Value"),
                Column.of("Standard error"),
                Column.of("Unit"),
                Column.of("Meaning")),
            rows)
        .withNote("Parameters have the digits that give the curve again.");
  }

  private static List<Cell> row(String... texts) {
    var cells = new ArrayList<Cell>();
    for (var text : texts) {
      cells.add(Cell.text(text));
    }
    return cells;
  }

  private static String error(OptionalDouble value) {
    return value.isPresent() ? significant(value.getAsDouble(), 3) : "not known";
  }

  private static ResultTable points(RateFit fit) {
    var rows = new ArrayList<List<Cell>>();
    for (var point : fit.points()) {
      double rate = fit.curve().rate(point.celsius());
      rows.add(
          List.of(
              Cell.number(point.celsius(), 2),
              Cell.number(point.rate(), 6),
              Cell.number(rate, 6),
              Cell.number(point.rate() - rate, 6)));
    }
    return ResultTable.of(
        "Rates",
        List.of(
            Column.of("Temperature", "°C"),
            Column.of("Observed", "1/d"),
            Column.of("Fitted", "1/d"),
            Column.of("Difference", "1/d")),
        rows);
  }

  static Presentation intervals(RateIntervals intervals) {
    var rows = new ArrayList<List<Cell>>();
    for (var one : intervals.all()) {
      rows.add(
          row(
              one.symbol(),
              significant(one.estimate(), DIGITS),
              significant(one.limits().low(), DIGITS),
              significant(one.limits().high(), DIGITS),
              one.unit(),
              one.name()));
    }
    var percent = Numbers.plain(100 * intervals.level()) + " %";
    var page =
        Presentation.titled(
                percent
                    + " intervals of "
                    + intervals.fit().curve().model().words()
                    + ", "
                    + intervals.fit().data().subject())
            .fact("Method", intervals.method())
            .table(
                ResultTable.of(
                    "Intervals",
                    List.of(
                        Column.of("Symbol"),
                        Column.of("Estimate"),
                        Column.of("From"),
                        Column.of("To"),
                        Column.of("Unit"),
                        Column.of("Meaning")),
                    rows));
    intervals.notes().forEach(note -> page.paragraph(sentence(note)));
    intervals.fit().remarks().stream()
        .filter(RateRemark::isAboutIdentification)
        .forEach(remark -> page.paragraph(sentence(remark.text())));
    return page.sources(
            intervals.sample().isPresent()
                ? List.of(RateSources.EFRON_TIBSHIRANI_1993, RateSources.HESTERBERG_2015)
                : List.of(RateSources.BATES_WATTS_1988))
        .build();
  }

  static Presentation line(ThermalLine line) {
    return Presentation.titled("Lower threshold and thermal constant of " + line.subject())
        .fact("Method", line.method().words())
        .fact(
            "Lower threshold",
            Numbers.fixed(line.lowerCelsius(), 2) + " °C" + plusMinus(line.lowerStandardError(), 2))
        .fact(
            "Thermal constant",
            Numbers.fixed(line.degreeDaysC(), 1)
                + " °C·d"
                + plusMinus(line.degreeDaysStandardError(), 1))
        .fact("Correlation", Numbers.fixed(line.correlation(), 4))
        .paragraph(
            "Threshold and constant belong together: neither may be paired with one of another"
                + " source.")
        .working(line.working())
        .sources(List.of(line.method().source()))
        .build();
  }

  private static String plusMinus(double error, int decimals) {
    return Double.isNaN(error)
        ? ", no standard error from two points"
        : ", standard error " + Numbers.fixed(error, decimals);
  }
}
