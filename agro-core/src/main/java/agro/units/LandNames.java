package agro.units;

/** Spellings of the names of land units. */
final class LandNames {

  private LandNames() {}

  /** Whether a lower-case word is the name of a land unit. */
  static boolean isKnown(String name) {
    return switch (standard(name)) {
      case "guntha", "cent", "decimal", "marla", "kanal", "killa", "murabba", "bigha", "katha" ->
          true;
      case "biswa", "rai", "ngan", "square wah", "mu", "feddan", "kirat", "dunam", "manzana" ->
          true;
      default -> false;
    };
  }

  /**
   * The standard spelling of a name of a land unit.
   *
   * @param name lower-case name
   * @return the standard spelling, or the name itself if no other is known
   */
  static String standard(String name) {
    return switch (name) {
      case "guntas", "gunta", "gunthas", "guntha" -> "guntha";
      case "cents" -> "cent";
      case "decimals", "shotak", "shotaks", "shotok" -> "decimal";
      case "marlas" -> "marla";
      case "kanals" -> "kanal";
      case "killas", "keela", "keelas", "qilla", "kila" -> "killa";
      case "murabbas", "muraba" -> "murabba";
      case "bighas", "bigah", "beegha", "beegah", "vigha" -> "bigha";
      case "kathas", "kattha", "katthas", "cottah", "cottahs", "kottah" -> "katha";
      case "biswas" -> "biswa";
      case "rais" -> "rai";
      case "ngans" -> "ngan";
      case "sq wah", "wah", "talang wah" -> "square wah";
      case "mou", "mow", "mus" -> "mu";
      case "feddans", "faddan", "faddans" -> "feddan";
      case "kirats", "qirat", "qirats" -> "kirat";
      case "dunams", "donum", "donums", "dunum", "dunums", "d\u00f6n\u00fcm" -> "dunam";
      case "manzanas" -> "manzana";
      default -> name;
    };
  }
}
