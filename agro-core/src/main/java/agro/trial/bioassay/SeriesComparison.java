package agro.trial.bioassay;

import agro.report.InputProblem;
import agro.working.Presentable;
import agro.working.Presentation;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Several series beside each other: a line for each, parallel lines, one line for all, and the
 * tests between them. Days or batches are compared in the same way, see {@link
 * BioassayData#daysAsSeries}.
 */
public final class SeriesComparison implements Presentable {

  private final DoseResponse choices;
  private final BioassayData data;
  private final List<String> series;
  private final List<DoseResponseFit> fits;
  private final Map<LineSharing, SeriesLines> lines;

  private SeriesComparison(
      DoseResponse choices,
      BioassayData data,
      List<DoseResponseFit> fits,
      Map<LineSharing, SeriesLines> lines) {
    this.choices = choices;
    this.data = data;
    this.series = data.series();
    this.fits = List.copyOf(fits);
    this.lines = lines;
  }

  static SeriesComparison of(DoseResponse choices, BioassayData data) {
    var names = data.series();
    if (names.size() < 2) {
      throw InputProblem.of("groups of one series" + (names.isEmpty() ? "" : " " + names))
          .expected("two series or more")
          .because("a comparison needs something to compare with")
          .mend("name the series of each group, or fit one curve with fit");
    }
    if (choices.immunity()) {
      throw InputProblem.of("a comparison of series with an immune share")
          .expected("curves without immunity")
          .because("lines of animals of which a part is out of reach have no common lethal dose")
          .mend("fit each series by itself");
    }
    var settled = choices.with(choices.natural().settled(data));
    var fits = new ArrayList<DoseResponseFit>();
    for (var name : names) {
      fits.add(settled.fit(data.ofSeries(name)));
    }
    var lines = new EnumMap<LineSharing, SeriesLines>(LineSharing.class);
    for (var sharing : LineSharing.values()) {
      var fitted = SeriesLines.fit(sharing, fits, data.controls());
      if (!fitted.converged) {
        throw InputProblem.of(sharing.words() + " through " + names)
            .expected("a likelihood with a greatest value")
            .because("the search did not settle")
            .mend("compare fewer series, or estimate natural mortality otherwise");
      }
      lines.put(sharing, fitted);
    }
    return new SeriesComparison(settled, data, fits, lines);
  }

  /**
   * The choices behind all fits.
   *
   * @return link, scale and the others
   */
  public DoseResponse choices() {
    return choices;
  }

  /**
   * The assay.
   *
   * @return all groups
   */
  public BioassayData data() {
    return data;
  }

  /**
   * Names of the series.
   *
   * @return in the order of the data
   */
  public List<String> series() {
    return series;
  }

  /**
   * The curve of one series by itself.
   *
   * @param name name of the series
   * @return its fit
   * @throws InputProblem when there is no such series
   */
  public DoseResponseFit fit(String name) {
    return fits.get(place(name));
  }

  private int place(String name) {
    int place = series.indexOf(name);
    if (place < 0) {
      throw InputProblem.of("no series \"" + name + "\"")
          .expected("one of " + series)
          .because("a ratio needs two of them")
          .mend("write the name as it stands in the data");
    }
    return place;
  }

  /**
   * Residual deviance of a way to share lines.
   *
   * @param sharing the way
   * @return the deviance
   */
  public double deviance(LineSharing sharing) {
    return lines.get(sharing).deviance;
  }

  /**
   * Pearson's X² of a way to share lines.
   *
   * @param sharing the way
   * @return X²
   */
  public double pearsonChiSquared(LineSharing sharing) {
    return lines.get(sharing).pearson;
  }

  /**
   * Degrees of freedom of a way to share lines.
   *
   * @param sharing the way
   * @return groups less parameters
   */
  public int degreesOfFreedom(LineSharing sharing) {
    return lines.get(sharing).degreesOfFreedom;
  }

  /**
   * Intercept of a series.
   *
   * @param sharing how the lines share
   * @param name name of the series
   * @return predictor at x = 0
   */
  public double intercept(LineSharing sharing, String name) {
    return lines.get(sharing).intercepts[place(name)];
  }

  /**
   * Slope of a series.
   *
   * @param sharing how the lines share
   * @param name name of the series
   * @return change of the predictor for one unit of the scale
   */
  public double slope(LineSharing sharing, String name) {
    return lines.get(sharing).slopes[place(name)];
  }

  /**
   * Standard error of a series' intercept, without a factor.
   *
   * @param sharing how the lines share
   * @param name name of the series
   * @return the standard error
   */
  public double interceptStandardError(LineSharing sharing, String name) {
    var fitted = lines.get(sharing);
    int place = fitted.intercept(place(name));
    return Math.sqrt(fitted.covariance[place][place]);
  }

  /**
   * Standard error of a series' slope, without a factor.
   *
   * @param sharing how the lines share
   * @param name name of the series
   * @return the standard error
   */
  public double slopeStandardError(LineSharing sharing, String name) {
    var fitted = lines.get(sharing);
    int place = fitted.slope(place(name));
    return Math.sqrt(fitted.covariance[place][place]);
  }

  /**
   * Whether the slopes differ: parallel lines against separate ones.
   *
   * @return the test
   */
  public LineTest parallelism() {
    return test(LineSharing.PARALLEL, LineSharing.SEPARATE);
  }

  /**
   * Whether the series differ at all: one line against separate ones.
   *
   * @return the test
   */
  public LineTest equality() {
    return test(LineSharing.ONE_LINE, LineSharing.SEPARATE);
  }

  /**
   * Whether parallel lines lie apart: one line against parallel ones.
   *
   * @return the test
   */
  public LineTest levels() {
    return test(LineSharing.ONE_LINE, LineSharing.PARALLEL);
  }

  private LineTest test(LineSharing fewer, LineSharing more) {
    return LineTest.between(
        lines.get(fewer), lines.get(more), lines.get(LineSharing.SEPARATE), choices);
  }

  /**
   * Lethal dose of a series on the common slope.
   *
   * @param name name of the series
   * @param percent above 0 and below 100
   * @return the dose with Fieller's limits
   */
  public LethalDose parallelLethalDose(String name, double percent) {
    return new ParallelDoses(choices, fits, lines.get(LineSharing.PARALLEL))
        .lethalDose(place(name), percent);
  }

  /**
   * Potency of a series: how many times the dose of the reference has to be for the same effect, on
   * parallel lines, with Fieller's limits.
   *
   * @param name name of the series
   * @param reference name of the reference
   * @return the ratio, the same at every level
   * @throws InputProblem when there is no such series or doses are not on a log scale
   */
  public DoseRatio relativePotency(String name, String reference) {
    requireLogarithm();
    int j = place(name);
    int k = place(reference);
    return new ParallelDoses(choices, fits, lines.get(LineSharing.PARALLEL))
        .potency(j, k, name, reference);
  }

  /**
   * Lethal dose of a series over that of the reference, each from its own line. The limits are
   * those of the logarithm of the ratio with the two standard errors by the delta method, Robertson
   * and Preisler 1992; the deviate is the larger one of the two fits.
   *
   * @param name name of the series
   * @param reference name of the reference
   * @param percent above 0 and below 100
   * @return the ratio
   * @throws InputProblem when there is no such series or doses are not on a log scale
   */
  public DoseRatio lethalDoseRatio(String name, String reference, double percent) {
    requireLogarithm();
    var one = fit(name);
    var other = fit(reference);
    var dose = one.lethalDose(percent);
    var from = other.lethalDose(percent);
    double log = dose.place() - from.place();
    double half =
        Math.max(one.deviate(), other.deviate())
            * Math.hypot(dose.placeStandardError(), from.placeStandardError());
    var scale = choices.scale();
    return new DoseRatio(
        DoseRatio.Kind.LETHAL_DOSE_RATIO,
        name,
        reference,
        percent,
        scale.dose(log),
        DoseLimits.between(scale.dose(log - half), scale.dose(log + half)),
        choices.confidence());
  }

  /**
   * Resistance ratios: lethal doses of all other series over that of a susceptible reference.
   *
   * @param susceptible name of the reference
   * @param percent above 0 and below 100
   * @return a ratio for each other series in the order of the data
   */
  public List<DoseRatio> resistanceRatios(String susceptible, double percent) {
    return series.stream()
        .filter(name -> !name.equals(susceptible))
        .map(name -> lethalDoseRatio(name, susceptible, percent))
        .toList();
  }

  /**
   * The lethal dose over all series, for series that are days or batches of one population: with
   * days as fixed blocks and as a random sample of days.
   *
   * @param percent above 0 and below 100
   * @return both averages
   */
  public AverageDose averageDose(double percent) {
    return AverageDose.of(
        new ParallelDoses(choices, fits, lines.get(LineSharing.PARALLEL)), choices, percent);
  }

  private void requireLogarithm() {
    if (!choices.scale().isLogarithm()) {
      throw InputProblem.of("a ratio of doses on the scale \"" + choices.scale().words() + "\"")
          .expected("LOG10, LN or LOG2")
          .because("lines against the plain dose have no constant ratio of doses")
          .mend("choose a logarithm with DoseScale");
    }
  }

  /**
   * The comparison in one sentence of the usual form.
   *
   * @return the tests of slopes and of all, with statistic, degrees of freedom and P
   */
  public String sentence() {
    return "Slopes: "
        + parallelism().words()
        + "; slopes and intercepts together: "
        + equality().words();
  }

  @Override
  public Presentation presentation() {
    return SeriesPrint.page(this);
  }

  @Override
  public String toString() {
    return series + ": " + sentence();
  }
}
