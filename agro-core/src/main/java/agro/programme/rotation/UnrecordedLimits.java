package agro.programme.rotation;

/** What becomes of a label record in which a limit is missing. */
public enum UnrecordedLimits {
  /** It is left out of every proposal, with the reason. */
  LEFT_OUT,
  /** It is proposed, and the missing limit counts as a doubt that has to be looked up. */
  DOUBTED
}
