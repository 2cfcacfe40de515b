package agro.trial.load;

import agro.sampling.injury.ProgressCurve;
import agro.source.Bibliography;
import agro.source.Reference;
import agro.source.SamplingBibliography;
import java.util.function.ToDoubleFunction;

/** One number for the course of a pest or a disease on a plot. */
public enum LoadMeasure {
  /** Area under the curve: insect-days, or per cent times days for a disease. */
  AREA("area under the curve", ProgressCurve::area, SamplingBibliography.RUPPEL_1983),
  /** Area for each day, which is the mean height of the curve. */
  MEAN_PER_DAY("area for each day", ProgressCurve::meanHeight, Bibliography.MADDEN_2007),
  /** Area under the stairs, where the first and the last count stand for a whole step. */
  STAIRS("area under the stairs", ProgressCurve::stairs, Bibliography.SIMKO_PIEPHO_2012),
  /** Area as a share of the greatest possible one; needs a greatest value. */
  RELATIVE_AREA("relative area", ProgressCurve::meanHeight, Bibliography.MADDEN_2007);

  private final String words;
  private final ToDoubleFunction<ProgressCurve> value;
  private final Reference source;

  LoadMeasure(String words, ToDoubleFunction<ProgressCurve> value, Reference source) {
    this.words = words;
    this.value = value;
    this.source = source;
  }

  /**
   * The measure in words.
   *
   * @return a phrase
   */
  public String words() {
    return words;
  }

  /**
   * Where it comes from.
   *
   * @return the reference
   */
  public Reference source() {
    return source;
  }

  double of(ProgressCurve curve, double greatest) {
    return this == RELATIVE_AREA ? curve.relativeArea(greatest) : value.applyAsDouble(curve);
  }
}
