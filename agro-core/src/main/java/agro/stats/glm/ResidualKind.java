package agro.stats.glm;

/** How the distance of an observation from its mean is measured. */
public enum ResidualKind {
  /** Signed root of the observation's part of the deviance. */
  DEVIANCE,
  /** Distance over the standard deviation, without the dispersion. */
  PEARSON,
  /** Deviance residual over root of dispersion times (1 - leverage). */
  STANDARDISED_DEVIANCE,
  /** Pearson residual over root of dispersion times (1 - leverage). */
  STANDARDISED_PEARSON,
  /** Distance on the scale of the observation. */
  RESPONSE
}
