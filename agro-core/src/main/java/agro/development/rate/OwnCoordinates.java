package agro.development.rate;

import java.util.List;

/**
 * A model searched in its own parameters, with numeric derivatives. Taken when a parameter is fixed
 * that is no coordinate of the model's usual search.
 */
final class OwnCoordinates implements RateEquation {

  private final RateEquation model;

  OwnCoordinates(RateEquation model) {
    this.model = model;
  }

  @Override
  public List<RateParameter> parameters() {
    return model.parameters();
  }

  @Override
  public double rate(double celsius, double[] p, ArrheniusConstants constants) {
    return model.rate(celsius, p, constants);
  }

  @Override
  public double fitted(double celsius, double[] p, ArrheniusConstants constants) {
    return model.fitted(celsius, model.toSearch(p, constants), constants);
  }

  /** The bounds of the usual search, carried over corner by corner and opened up. */
  @Override
  public SearchBox box(DataSpan span) {
    var usual = model.box(span);
    int k = usual.low.length;
    double[] from = model.toParameters(usual.startLow, span.constants());
    double[] to = model.toParameters(usual.startHigh, span.constants());
    var box = new SearchBox(k);
    for (int j = 0; j < k; j++) {
      if (model.isDirect(j)) {
        box.add(usual.low[j], usual.high[j], usual.startLow[j], usual.startHigh[j]);
      } else {
        double least = Math.min(Math.abs(from[j]), Math.abs(to[j]));
        double most = Math.max(Math.abs(from[j]), Math.abs(to[j]));
        box.add(1e-4 * least, 1e4 * most, least, most);
      }
    }
    return box;
  }

  @Override
  public double optimum(double[] p, ArrheniusConstants constants) {
    return model.optimum(p, constants);
  }

  @Override
  public double lower(double[] p) {
    return model.lower(p);
  }

  @Override
  public double upper(double[] p) {
    return model.upper(p);
  }
}
