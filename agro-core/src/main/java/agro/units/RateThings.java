package agro.units;

import java.util.List;

/** Things and substances that rates are written for: "per plant", "per kg seed". */
final class RateThings {

  private static final List<String> THINGS =
      List.of(
          "plant",
          "tree",
          "vine",
          "bush",
          "palm",
          "seedling",
          "seed",
          "hill",
          "hole",
          "pit",
          "pot",
          "tray",
          "bag",
          "spot",
          "trap",
          "hive",
          "row",
          "bed",
          "load",
          "tank",
          "knapsack",
          "pump",
          "sprayer",
          "sachet",
          "pack",
          "tablet",
          "bottle cap",
          "application",
          "season",
          "stem",
          "stump",
          "nozzle");
  private static final List<String> SUBSTANCES =
      List.of(
          "ai",
          "active ingredient",
          "ae",
          "acid equivalent",
          "product",
          "formulation",
          "formulated product",
          "water",
          "spray",
          "spray solution",
          "solution",
          "spray liquid",
          "seed",
          "seeds",
          "manure",
          "compost",
          "substrate",
          "soil",
          "row",
          "bed",
          "wet manure",
          "farmyard manure",
          "wet farmyard manure",
          "dry farmyard manure",
          "dry manure",
          "leaf wall",
          "leaf wall area",
          "lwa",
          "tree row volume",
          "trv",
          "canopy",
          "ground",
          "field",
          "treated area");

  private RateThings() {}

  static List<String> all() {
    return THINGS;
  }

  /** The thing in the singular, or null if the word is none. */
  static String thing(String word) {
    var lower = TextCursor.lower(word);
    if (THINGS.contains(lower)) {
      return lower;
    }
    if (lower.length() > 2 && lower.charAt(lower.length() - 1) == 's') {
      var singular = lower.equals("bushes") ? "bush" : lower.substring(0, lower.length() - 1);
      return THINGS.contains(singular) ? singular : null;
    }
    return lower.equals("tankful") ? "tank" : null;
  }

  static boolean isSubstance(String word) {
    return SUBSTANCES.contains(TextCursor.lower(word));
  }
}
