package agro.sampling.sequential;

import agro.source.Reference;

/** The two lines between which sampling goes on. */
public sealed interface StopBounds permits WaldLines, ConfidenceBand {

  /**
   * Total at or below which the field is called low.
   *
   * @param units units looked at, 1 or more
   * @return animals, below 0 when the field cannot yet be called low
   */
  double low(int units);

  /**
   * Total at or above which the field is called high.
   *
   * @param units units looked at, 1 or more
   * @return animals
   */
  double high(int units);

  /**
   * The mean between low and high, for a decision when sampling has to end.
   *
   * @return mean count for each unit
   */
  double middle();

  /**
   * The lines in words.
   *
   * @return one line
   */
  String words();

  /**
   * Where the lines are published.
   *
   * @return the source
   */
  Reference source();
}
