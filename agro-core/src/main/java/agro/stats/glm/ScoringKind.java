package agro.stats.glm;

/** What is fitted, apart from the numbers. */
record ScoringKind(Scatter scatter, LinkFunction link, boolean penalised) {

  ScoringKind plain() {
    return new ScoringKind(scatter, link, false);
  }
}
