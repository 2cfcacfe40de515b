package agro.trial.series;

import agro.stats.UpperTail;
import agro.stats.linear.Factor;
import agro.stats.linear.ModelTerm;
import agro.stats.mixed.FixedEffectTest;
import agro.stats.mixed.MixedMeans;
import agro.stats.mixed.MixedModel;
import agro.stats.mixed.MixedModelFit;
import agro.stats.mixed.WithinSubject;
import agro.stats.multiple.ComparedMeans;
import agro.stats.multiple.PairwiseComparison;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Treatment, date and their product with plots as subjects. */
final class DateModel {

  private final DatedFigures figures;
  private final Factor treatment;
  private final Factor date;
  private final Factor plot;
  private final Optional<Factor> block;

  DateModel(DatedFigures figures) {
    this.figures = figures;
    var lines = figures.figures();
    treatment =
        Factor.of("treatment", lines.stream().map(each -> each.plot().treatment()).toList());
    date = Factor.of("date", lines.stream().map(each -> each.date().toString()).toList());
    plot = Factor.of("plot", lines.stream().map(each -> each.plot().name()).toList());
    var blocks = lines.stream().map(each -> "block " + each.plot().block()).toList();
    block =
        blocks.stream().distinct().count() > 1
            ? Optional.of(Factor.of("block", blocks))
            : Optional.empty();
  }

  Factor plot() {
    return plot;
  }

  ModelTerm treatmentTerm() {
    return ModelTerm.of(treatment);
  }

  ModelTerm dateTerm() {
    return ModelTerm.of(date);
  }

  ModelTerm productTerm() {
    return ModelTerm.of(treatment, date);
  }

  int plots() {
    return plot.levelCount();
  }

  int treatments() {
    return treatment.levelCount();
  }

  int blocks() {
    return block.map(Factor::levelCount).orElse(1);
  }

  /** Blocks may change over the dates, each in its way; so the error is that of plots in blocks. */
  List<ModelTerm> terms() {
    var terms = new ArrayList<ModelTerm>();
    block.ifPresent(
        each -> {
          terms.add(ModelTerm.of(each));
          terms.add(ModelTerm.of(each, date));
        });
    terms.add(treatmentTerm());
    terms.add(dateTerm());
    terms.add(productTerm());
    return terms;
  }

  double[] values() {
    return figures.figures().stream().mapToDouble(DatedFigure::value).toArray();
  }

  MixedModelFit fit(DateCorrelation correlation) {
    if (correlation == DateCorrelation.FALLING) {
      double[] days =
          figures.figures().stream().mapToDouble(each -> each.date().toEpochDay()).toArray();
      return MixedModel.of(terms(), List.of())
          .with(WithinSubject.autoregressive(plot, days))
          .fit(values());
    }
    return MixedModel.of(terms(), List.of(ModelTerm.of(plot))).fit(values());
  }

  List<FixedEffectTest> tests(MixedModelFit fit) {
    return List.of(
        ofPlots(fit.test(treatmentTerm())), fit.test(dateTerm()), fit.test(productTerm()));
  }

  int errorDegreesOfFreedom() {
    return plots() - treatments() - blocks() + 1;
  }

  /**
   * Where the data show no correlation within plots, the model would count each date as a plot; the
   * treatments were laid out on plots, and these alone are their replicates.
   */
  private FixedEffectTest ofPlots(FixedEffectTest test) {
    double df2 = Math.min(test.df2(), errorDegreesOfFreedom());
    return new FixedEffectTest(
        test.name(), test.f(), test.df1(), df2, UpperTail.f(test.f(), test.df1(), df2));
  }

  /** Means of the treatments on each date, compared within the date. */
  Map<LocalDate, JoinedMeans> meansByDate(MixedModelFit fit, PairwiseComparison comparison) {
    var means = fit.means(date, treatment);
    Map<LocalDate, JoinedMeans> byDate = new LinkedHashMap<>();
    for (var day : figures.dates()) {
      var names = new ArrayList<String>();
      var places = new ArrayList<Integer>();
      for (var name : treatment.levels()) {
        int place = means.labels().indexOf(day + ":" + name);
        if (place >= 0) {
          names.add(name);
          places.add(place);
        }
      }
      if (names.size() > 1) {
        byDate.put(day, joined(means, names, places, day, comparison));
      }
    }
    return byDate;
  }

  private JoinedMeans joined(
      MixedMeans means,
      List<String> names,
      List<Integer> places,
      LocalDate day,
      PairwiseComparison comparison) {
    int size = names.size();
    double[] values = new double[size];
    double[][] variances = new double[size][size];
    double df = Double.POSITIVE_INFINITY;
    Map<String, OptionalDouble> errors = new LinkedHashMap<>();
    Map<String, Integer> plots = new LinkedHashMap<>();
    for (int i = 0; i < size; i++) {
      var mean = means.mean(places.get(i));
      values[i] = mean.estimate();
      errors.put(names.get(i), OptionalDouble.of(mean.standardError()));
      plots.put(names.get(i), count(day, names.get(i)));
      for (int j = 0; j < i; j++) {
        var difference = means.difference(places.get(i), places.get(j));
        variances[i][j] = difference.standardError() * difference.standardError();
        variances[j][i] = variances[i][j];
        df = Math.min(df, difference.degreesOfFreedom());
      }
    }
    return JoinedMeans.of(
        ComparedMeans.ofDifferences(names, values, variances, df), errors, plots, comparison);
  }

  private int count(LocalDate day, String name) {
    return (int)
        figures.figures().stream()
            .filter(each -> each.date().equals(day) && each.plot().treatment().equals(name))
            .count();
  }
}
