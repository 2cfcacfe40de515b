package agro.source;

/**
 * The works that this library cites, each once. Formulas and data point here, so that a wrong page
 * number is mended in one place.
 */
public final class Bibliography {

  /** Daily degree-days from a single sine through the daily extremes. */
  public static final Reference BASKERVILLE_EMIN_1969 =
      Reference.fromMemory(
          "Baskerville, G. L. & Emin, P.",
          1969,
          "Rapid estimation of heat accumulation from maximum and minimum temperatures",
          "Ecology 50:514-517");

  /** The sine day as a model of temperature for heat units. */
  public static final Reference ARNOLD_1960 =
      Reference.fromMemory(
          "Arnold, C. Y.",
          1960,
          "Maximum-minimum temperatures as a basis for computing heat units",
          "Proceedings of the American Society for Horticultural Science 76:682-692");

  /** Leek moth: lower threshold 7 °C and 444.6 °C·d from egg to adult, eastern Ontario. */
  public static final Reference MASON_2010 =
      Reference.read(
          "Mason, P. G., Appleby, M., Juneja, S., Allen, J. & Landry, J.-F.",
          2010,
          "Biology and development of Acrolepiopsis assectella (Lepidoptera: Acrolepiidae) in"
              + " eastern Ontario",
          "The Canadian Entomologist 142:393-404, abstract; doi 10.4039/n10-026");

  /** The four rules for temperatures above an upper threshold. */
  public static final Reference UPPER_CUTOFFS =
      Reference.commonPractice(
          "Horizontal, intermediate and vertical cutoff of degree-days at an upper threshold, with"
              + " closed forms derived here from the sine day");

  private Bibliography() {}
}
