package agro.trial.analysis;

/** How the values of plots are taken to scatter, and so which analysis is made of them. */
public enum AnalysisRoute {
  /** Normal errors of one variance: analysis of variance, with strata where plots are divided. */
  NORMAL("analysis of variance"),
  /** Counts whose variance is their mean. */
  POISSON("generalised linear model, Poisson"),
  /** Counts whose variance is a multiple of their mean. */
  QUASI_POISSON("generalised linear model, quasi-Poisson"),
  /** Counts whose variance grows faster than their mean. */
  NEGATIVE_BINOMIAL("generalised linear model, negative binomial"),
  /** So many of n with the binomial variance. */
  BINOMIAL("generalised linear model, binomial"),
  /** So many of n with a multiple of the binomial variance. */
  QUASI_BINOMIAL("generalised linear model, quasi-binomial"),
  /** Ranks: Kruskal-Wallis without blocks, Friedman within complete blocks. */
  RANKS("ranks"),
  /** Normal errors with a variance of its own in each treatment, without blocks. */
  WELCH("Welch's analysis with unequal variances");

  private final String words;

  AnalysisRoute(String words) {
    this.words = words;
  }

  /**
   * The analysis in words.
   *
   * @return a phrase
   */
  public String words() {
    return words;
  }

  /**
   * Whether a generalised linear model is fitted.
   *
   * @return true for the families of counts and shares
   */
  public boolean isGeneralisedLinear() {
    return this != NORMAL && this != RANKS && this != WELCH;
  }
}
