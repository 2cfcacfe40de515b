package agro.trial.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Codes of two letters that tell nothing of the treatments behind them. */
final class TreatmentCodes {

  /** Letters that are not mistaken for each other or for digits in handwriting. */
  private static final String LETTERS = "ACEFHKMPRTXY";

  private static final long PURPOSE = 2;

  private TreatmentCodes() {}

  static Map<String, String> draw(List<String> treatments, long seed) {
    var codes = new ArrayList<String>();
    for (int i = 0; i < LETTERS.length(); i++) {
      for (int j = 0; j < LETTERS.length(); j++) {
        if (i != j) {
          codes.add("" + LETTERS.charAt(i) + LETTERS.charAt(j));
        }
      }
    }
    if (treatments.size() > codes.size()) {
      throw new IllegalArgumentException(
          "there are codes for " + codes.size() + " treatments, but got " + treatments.size());
    }
    var order = SeededDraws.forPurpose(seed, PURPOSE).shuffled(codes);
    var drawn = new LinkedHashMap<String, String>();
    for (int i = 0; i < treatments.size(); i++) {
      drawn.put(treatments.get(i), order.get(i));
    }
    return drawn;
  }
}
