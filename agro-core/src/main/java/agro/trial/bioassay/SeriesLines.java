package agro.trial.bioassay;

import java.util.Arrays;
import java.util.List;

/**
 * The lines of several series fitted together. Natural mortality is a series' own when the series
 * has controls of its own, otherwise common to all series without.
 */
final class SeriesLines {

  final LineSharing sharing;
  final double[] intercepts;
  final double[] slopes;
  final double[][] covariance;
  final double logLikelihood;
  final double deviance;
  final double pearson;
  final int degreesOfFreedom;
  final boolean converged;
  private final int series;

  private SeriesLines(Layout layout, CurveSearch search, FisherInformation information) {
    sharing = layout.sharing;
    series = layout.fits.size();
    double centre = search.centre();
    intercepts = new double[series];
    slopes = new double[series];
    for (int j = 0; j < series; j++) {
      slopes[j] = search.at[layout.slope(j)];
      intercepts[j] = search.at[layout.intercept(j)] - centre * slopes[j];
    }
    covariance = search.covariance(information);
    converged = search.converged && covariance != null;
    if (converged) {
      for (int i = 0; i < layout.interceptCount(); i++) {
        ParameterShift.uncentre(covariance, i, layout.slope(i), centre);
      }
    }
    logLikelihood = search.logLikelihood;
    double saturated = 0;
    double squares = 0;
    for (var point : layout.model.points) {
      saturated += saturated(point.responded(), point.exposed());
      squares += squared(layout.model, point, search);
    }
    deviance = 2 * (saturated - logLikelihood);
    pearson = squares;
    int free = search.at.length;
    for (boolean held : search.held) {
      free -= held ? 1 : 0;
    }
    degreesOfFreedom = Math.max(0, layout.model.points.size() - free);
  }

  static SeriesLines fit(
      LineSharing sharing, List<DoseResponseFit> fits, List<DoseGroup> controls) {
    var layout = new Layout(sharing, fits, controls);
    return new SeriesLines(layout, layout.search(), fits.get(0).choices().information());
  }

  private static double saturated(double r, double n) {
    return (r == 0 ? 0 : r * Math.log(r / n)) + (r == n ? 0 : (n - r) * Math.log1p(-r / n));
  }

  private static double squared(CurveModel model, CurveModel.Point point, CurveSearch search) {
    double c = CurveModel.natural(point, search.at);
    double eta = model.eta(point, search.at, search.centre());
    double p = c + (1 - c) * model.link.mean(eta);
    double q = (1 - c) * model.link.complement(eta);
    double difference = point.responded() - point.exposed() * p;
    return difference == 0 ? 0 : difference * difference / (point.exposed() * p * q);
  }

  /** Place of a series' intercept in the covariance. */
  int intercept(int j) {
    return sharing == LineSharing.ONE_LINE ? 0 : j;
  }

  /** Place of a series' slope in the covariance. */
  int slope(int j) {
    return sharing == LineSharing.SEPARATE
        ? series + j
        : sharing == LineSharing.PARALLEL ? series : 1;
  }

  double goodnessOfFitP() {
    return Deviates.chiSquaredTail(pearson, degreesOfFreedom);
  }

  boolean isHeterogeneous(HeterogeneityRule rule) {
    if (degreesOfFreedom == 0) {
      return false;
    }
    return switch (rule.when()) {
      case NEVER -> false;
      case ALWAYS -> true;
      case BELOW_LEVEL -> goodnessOfFitP() < rule.level();
    };
  }

  double factor(HeterogeneityRule rule) {
    return isHeterogeneous(rule) ? pearson / degreesOfFreedom : 1;
  }

  double deviate(DoseResponse choices) {
    return isHeterogeneous(choices.heterogeneity())
        ? Deviates.student(choices.confidence(), degreesOfFreedom)
        : Deviates.normal(choices.confidence());
  }

  /** Which parameter stands where, and where the search starts. */
  private static final class Layout {
    final LineSharing sharing;
    final List<DoseResponseFit> fits;
    final CurveModel model;
    private final int lineParameters;
    private final int[] natural;
    private final double centre;

    Layout(LineSharing sharing, List<DoseResponseFit> fits, List<DoseGroup> controls) {
      this.sharing = sharing;
      this.fits = fits;
      int count = fits.size();
      lineParameters = interceptCount() + (sharing == LineSharing.SEPARATE ? count : 1);
      natural = new int[count];
      int parameters = placeNatural(controls);
      model = new CurveModel(fits.get(0).choices().link(), parameters);
      double sum = 0;
      for (int j = 0; j < count; j++) {
        var groups = fits.get(j).groups();
        sum += SingleCurve.centre(groups) / count;
        addDosed(groups, j);
      }
      centre = sum;
      addControls();
    }

    int interceptCount() {
      return sharing == LineSharing.ONE_LINE ? 1 : fits.size();
    }

    int intercept(int j) {
      return sharing == LineSharing.ONE_LINE ? 0 : j;
    }

    int slope(int j) {
      return interceptCount() + (sharing == LineSharing.SEPARATE ? j : 0);
    }

    private int placeNatural(List<DoseGroup> controls) {
      int next = lineParameters;
      int common = CurveModel.NONE;
      boolean anyControl = !controls.isEmpty();
      for (int j = 0; j < fits.size(); j++) {
        var groups = fits.get(j).groups();
        natural[j] = CurveModel.NONE;
        if (groups.way != NaturalMortality.Way.IN_MODEL) {
          continue;
        }
        boolean own =
            !anyControl
                || groups.controls.stream().anyMatch(control -> !control.series().isEmpty());
        if (own) {
          natural[j] = next++;
        } else {
          common = common == CurveModel.NONE ? next++ : common;
          natural[j] = common;
        }
      }
      return next;
    }

    private void addDosed(FitGroups groups, int j) {
      for (int i = 0; i < groups.x.length; i++) {
        model.points.add(
            new CurveModel.Point(
                groups.x[i],
                groups.exposed[i],
                groups.responded[i],
                0,
                intercept(j),
                slope(j),
                natural[j],
                groups.fixedInCurve(),
                CurveModel.NONE));
      }
    }

    private void addControls() {
      for (int j = 0; j < fits.size(); j++) {
        if (natural[j] == CurveModel.NONE) {
          continue;
        }
        boolean first = true;
        for (int i = 0; i < j; i++) {
          first &= natural[i] != natural[j];
        }
        if (first) {
          var places =
              new SingleCurve.Places(CurveModel.NONE, CurveModel.NONE, natural[j], CurveModel.NONE);
          for (var control : fits.get(j).groups().controls) {
            SingleCurve.addControl(model, control, places);
          }
        }
      }
    }

    CurveSearch search() {
      var start = new double[model.parameters];
      Arrays.fill(start, lineParameters, model.parameters, 1e-3);
      int count = fits.size();
      for (int j = 0; j < count; j++) {
        var fit = fits.get(j);
        double share = sharing == LineSharing.SEPARATE ? 1 : 1.0 / count;
        start[slope(j)] += share * fit.slope();
        double atCentre = fit.intercept() + fit.slope() * centre;
        start[intercept(j)] += sharing == LineSharing.ONE_LINE ? atCentre / count : atCentre;
        if (natural[j] != CurveModel.NONE) {
          start[natural[j]] = Math.max(1e-3, fit.naturalMortality());
        }
      }
      return CurveSearch.from(model, start, centre);
    }
  }
}
