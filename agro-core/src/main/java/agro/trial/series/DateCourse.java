package agro.trial.series;

import agro.report.InputProblem;
import agro.stats.mixed.FixedEffectTest;
import agro.stats.mixed.VarianceComponent;
import agro.working.Presentable;
import agro.working.Presentation;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Treatments over repeated dates of the same plots.
 *
 * @param settings how they were analysed
 * @param figures the values
 * @param summaries one number for each plot, analysed; read these first
 * @param correlation the correlation that was used
 * @param advantageOfFalling log restricted likelihood of the falling correlation less that of the
 *     equal one
 * @param correlationOfShortest correlation of dates the shortest interval apart, for the falling
 *     one
 * @param variances variances of plots and of the residual
 * @param tests treatment, date and treatment by date, after Satterthwaite; the treatments with no
 *     more degrees of freedom than the plots give, since dates are no replicates
 * @param meansByDate means of treatments on each date, compared within the date
 * @param spread scatter of plots date by date
 * @param splitPlot the split plot in time, where the layout allows it
 * @param notes missing values and what could not be done
 */
public record DateCourse(
    RepeatedDates settings,
    DatedFigures figures,
    List<SummaryAnalysis> summaries,
    DateCorrelation correlation,
    double advantageOfFalling,
    OptionalDouble correlationOfShortest,
    List<VarianceComponent> variances,
    List<FixedEffectTest> tests,
    Map<LocalDate, JoinedMeans> meansByDate,
    List<DateSpread> spread,
    Optional<SplitPlotInTime> splitPlot,
    List<String> notes)
    implements Presentable {

  /** Copies the lists. */
  public DateCourse {
    Objects.requireNonNull(settings, "settings");
    Objects.requireNonNull(figures, "figures");
    summaries = List.copyOf(summaries);
    Objects.requireNonNull(correlation, "correlation");
    Objects.requireNonNull(correlationOfShortest, "correlationOfShortest");
    variances = List.copyOf(variances);
    tests = List.copyOf(tests);
    meansByDate = Collections.unmodifiableMap(new LinkedHashMap<>(meansByDate));
    spread = List.copyOf(spread);
    Objects.requireNonNull(splitPlot, "splitPlot");
    notes = List.copyOf(notes);
  }

  /**
   * Test of treatments over all dates.
   *
   * @return the test
   */
  public FixedEffectTest treatment() {
    return tests.get(0);
  }

  /**
   * Test of dates.
   *
   * @return the test
   */
  public FixedEffectTest date() {
    return tests.get(1);
  }

  /**
   * Test of treatment by date: do the treatments take different courses?
   *
   * @return the test
   */
  public FixedEffectTest treatmentByDate() {
    return tests.get(2);
  }

  /**
   * Means of one date.
   *
   * @param date the day
   * @return means with letters
   * @throws InputProblem when there are none
   */
  public JoinedMeans on(LocalDate date) {
    var means = meansByDate.get(date);
    if (means == null) {
      throw InputProblem.of("means of " + date)
          .expected("one of " + meansByDate.keySet())
          .because("there are no others")
          .mend("ask for a day on which at least two treatments were assessed");
    }
    return means;
  }

  /**
   * Days between the dates.
   *
   * @return one number less than dates
   */
  public List<Long> intervals() {
    var days = figures.dates();
    var gaps = new ArrayList<Long>();
    for (int i = 1; i < days.size(); i++) {
      gaps.add(ChronoUnit.DAYS.between(days.get(i - 1), days.get(i)));
    }
    return List.copyOf(gaps);
  }

  /**
   * Whether all intervals are equal.
   *
   * @return true when they are
   */
  public boolean evenlySpaced() {
    return intervals().stream().distinct().count() <= 1;
  }

  /**
   * What the numbers mean and how far they go.
   *
   * @return sentences in order
   */
  public List<String> advice() {
    var advice = new ArrayList<String>();
    advice.add(
        "One number for each plot comes first: it needs no model of the time and answers most"
            + " questions. The dates are repeated looks at the same plots and never replicates.");
    double level = settings.comparison().level();
    advice.add(
        treatmentByDate().pValue() <= level
            ? "Treatments take different courses ("
                + treatmentByDate().sentence()
                + "): read the means date by date."
            : "Different courses of treatments were not found ("
                + treatmentByDate().sentence()
                + "): their means over the dates say it all.");
    if (!evenlySpaced()) {
      advice.add(
          "The dates are spaced unevenly, by "
              + DatePrint.words(intervals())
              + " days: the falling correlation takes the days into account, the equal one and the"
              + " split plot in time do not, and a mean of dates counts crowded dates as much as"
              + " lonely ones; the area under the curve does not.");
    }
    if (unevenScatter()) {
      advice.add(
          "Plots scatter unlike from date to date: the largest error variance is "
              + PlainFigure.of(ratioOfErrors())
              + " times the smallest above zero. Tests over the dates suppose one scatter; take a"
              + " scale on which they are alike, such as the logarithm with a stated constant, or"
              + " rely on one number for each plot and on the dates one by one.");
    }
    return List.copyOf(advice);
  }

  private boolean unevenScatter() {
    return ratioOfErrors() > SiteVariances.POOLED_UP_TO;
  }

  /** Largest over smallest error variance above zero; 1 where there are no two. */
  private double ratioOfErrors() {
    var range =
        spread.stream()
            .mapToDouble(DateSpread::errorVariance)
            .filter(each -> each > 0)
            .summaryStatistics();
    return range.getCount() > 1 ? range.getMax() / range.getMin() : 1;
  }

  @Override
  public Presentation presentation() {
    return DatePrint.of(this);
  }

  @Override
  public String toString() {
    return figures + ": " + tests;
  }
}
