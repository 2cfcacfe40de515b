package agro.trial.bioassay;

/** The parameters of one curve with both covariances, in the order a, b, C, D as far as free. */
final class CurveEstimate {

  final double a;
  final double b;
  final double natural;
  final double immune;

  /** Place of C and D among the rows of the covariances, or {@link CurveModel#NONE}. */
  final int naturalPlace;

  final int immunePlace;
  final boolean naturalAtZero;
  final boolean immuneAtZero;
  final int free;
  final int steps;
  private final double[][] expected;
  private final double[][] observed;

  private CurveEstimate(LineSearch line, double natural) {
    a = line.a;
    b = line.b;
    this.natural = natural;
    immune = 0;
    naturalPlace = CurveModel.NONE;
    immunePlace = CurveModel.NONE;
    naturalAtZero = false;
    immuneAtZero = false;
    free = 2;
    steps = line.steps;
    expected = inverse(line.expectedAa, line.expectedAb, line.expectedBb, line.expectedDeterminant);
    observed = inverse(line.observedAa, line.observedAb, line.observedBb, line.observedDeterminant);
  }

  private CurveEstimate(CurveSearch search, int naturalPlace, int immunePlace, double fixed) {
    double centre = search.centre();
    b = search.at[1];
    a = search.at[0] - centre * b;
    this.naturalPlace = naturalPlace;
    this.immunePlace = immunePlace;
    natural = naturalPlace == CurveModel.NONE ? fixed : search.at[naturalPlace];
    immune = immunePlace == CurveModel.NONE ? 0 : search.at[immunePlace];
    naturalAtZero = naturalPlace != CurveModel.NONE && natural == 0;
    immuneAtZero = immunePlace != CurveModel.NONE && immune == 0;
    free = search.at.length - (naturalAtZero ? 1 : 0) - (immuneAtZero ? 1 : 0);
    steps = search.steps;
    expected = uncentred(search.covariance(FisherInformation.EXPECTED), centre);
    observed = uncentred(search.covariance(FisherInformation.OBSERVED), centre);
  }

  static CurveEstimate of(LineSearch line, double natural) {
    return new CurveEstimate(line, natural);
  }

  static CurveEstimate of(CurveSearch search, int naturalPlace, int immunePlace, double fixed) {
    return new CurveEstimate(search, naturalPlace, immunePlace, fixed);
  }

  private static double[][] inverse(double aa, double ab, double bb, double determinant) {
    return new double[][] {
      {bb / determinant, -ab / determinant}, {-ab / determinant, aa / determinant}
    };
  }

  private static double[][] uncentred(double[][] covariance, double centre) {
    if (covariance != null) {
      ParameterShift.uncentre(covariance, 0, 1, centre);
    }
    return covariance;
  }

  boolean isUsable(FisherInformation information) {
    var matrix = covariance(information);
    return matrix != null
        && matrix[0][0] > 0
        && matrix[1][1] > 0
        && Double.isFinite(matrix[0][0] + matrix[1][1]);
  }

  double[][] covariance(FisherInformation information) {
    return information == FisherInformation.EXPECTED ? expected : observed;
  }
}
