package agro.stats.linear;

import agro.source.Reference;

/**
 * Which other terms a term is adjusted for when its sum of squares is taken. For balanced data the
 * three agree.
 */
public enum SumsOfSquares {
  /** Each term after those stated before it; the parts add up. */
  SEQUENTIAL("sequential", "type I", LinearSources.FISHER_1925),
  /** Each term after all terms that do not contain it (marginality, Nelder 1977). */
  HIERARCHICAL("hierarchical", "type II", LinearSources.NELDER_1977),
  /**
   * Each term after all others, with effects that sum to zero: equally weighted means of the cells
   * are compared (Yates 1934). Not testable for a term whose cells are not all there.
   */
  MARGINAL("marginal", "type III", LinearSources.YATES_1934);

  private final String words;
  private final String numeral;
  private final Reference source;

  SumsOfSquares(String words, String numeral, Reference source) {
    this.words = words;
    this.numeral = numeral;
    this.source = source;
  }

  /**
   * The work that describes them.
   *
   * @return a reference
   */
  public Reference source() {
    return source;
  }

  /**
   * The plain name with the usual numeral, such as "hierarchical (type II)".
   *
   * @return a phrase in lower case
   */
  public String words() {
    return words + " (" + numeral + ")";
  }

  /**
   * The usual numeral.
   *
   * @return for example "type II"
   */
  public String numeral() {
    return numeral;
  }
}
