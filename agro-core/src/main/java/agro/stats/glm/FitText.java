package agro.stats.glm;

import java.util.Locale;

/** A fit as plain text. */
final class FitText {

  private FitText() {}

  static String of(GeneralisedLinearFit fit) {
    var text = new StringBuilder();
    text.append(fit.model()).append('\n');
    for (var coefficient : fit.coefficients()) {
      text.append("  ").append(coefficient).append('\n');
    }
    text.append(
        String.format(
            Locale.ROOT,
            "deviance %s, Pearson's X2 %s, %d residual degrees of freedom",
            Figures.of(fit.deviance()),
            Figures.of(fit.pearsonChiSquared()),
            fit.residualDegreesOfFreedom()));
    if (fit.model().family().dispersionIsEstimated()) {
      text.append(", dispersion ").append(Figures.of(fit.dispersion()));
    }
    fit.logLikelihood()
        .ifPresent(value -> text.append("\nlog-likelihood ").append(Figures.of(value)));
    fit.akaike().ifPresent(value -> text.append(", AIC ").append(Figures.of(value)));
    fit.shape().ifPresent(shape -> text.append('\n').append(shape));
    for (String remark : fit.remarks()) {
      text.append('\n').append(remark);
    }
    return text.toString();
  }
}
