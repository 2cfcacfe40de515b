package agro.trial;

import agro.trial.NearTreatment.Difference;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds names of treatments that may be two spellings of one. */
final class NearNames {

  /** Shorter words are codes, and codes differ on purpose. */
  private static final int SHORTEST_WORD = 4;

  private static final int LONG_WORD = 8;

  private NearNames() {}

  static List<NearTreatment> of(FieldTrial trial) {
    var found = new ArrayList<NearTreatment>();
    for (var factor : trial.factors()) {
      var plots = plotsOfLevels(trial, factor);
      var names = plots.keySet().stream().sorted(NaturalOrder.ofNames()).toList();
      for (int i = 0; i < names.size(); i++) {
        for (int j = i + 1; j < names.size(); j++) {
          var one = names.get(i);
          var other = names.get(j);
          difference(one, other).ifPresent(how -> found.add(near(factor, one, other, plots, how)));
        }
      }
    }
    return List.copyOf(found);
  }

  /** Names of levels with their plots, spellings that lost against a more frequent one included. */
  private static Map<String, Integer> plotsOfLevels(FieldTrial trial, String factor) {
    var counts = new HashMap<String, Integer>();
    for (var plot : trial.plots()) {
      var names = new HashSet<String>();
      for (var way : trial.descriptionsOf(plot).keySet()) {
        way.level(factor).ifPresent(names::add);
      }
      names.forEach(name -> counts.merge(name, 1, Integer::sum));
    }
    return counts;
  }

  private static NearTreatment near(
      String factor, String one, String other, Map<String, Integer> plots, Difference how) {
    boolean oneIsRarer = plots.get(one) <= plots.get(other);
    var rarer = oneIsRarer ? one : other;
    var frequent = oneIsRarer ? other : one;
    return new NearTreatment(factor, rarer, frequent, plots.get(rarer), plots.get(frequent), how);
  }

  static Optional<Difference> difference(String one, String other) {
    var a = words(one);
    var b = words(other);
    var joinedA = String.join("", a);
    var joinedB = String.join("", b);
    if (joinedA.equals(joinedB)) {
      return sameWriting(one, other);
    }
    if (digitsForLetters(joinedA).equals(digitsForLetters(joinedB))) {
      return Optional.of(Difference.LOOK_ALIKES);
    }
    if (!digits(joinedA).equals(digits(joinedB))) {
      return Optional.empty();
    }
    boolean near = a.size() == b.size() ? wordsAreNear(a, b) : isSlip(joinedA, joinedB);
    return near ? Optional.of(Difference.LETTERS) : Optional.empty();
  }

  /** Names with the same letters and digits, unless a decimal mark or a sign tells them apart. */
  private static Optional<Difference> sameWriting(String one, String other) {
    return signs(one).equals(signs(other)) ? Optional.of(Difference.WRITING) : Optional.empty();
  }

  private static String signs(String text) {
    return text.replaceAll("(?<![0-9])[.,]|[.,](?![0-9])", "")
        .replaceAll("\\s+", "")
        .replaceAll("(?<![0-9])-(?![0-9])|(?<=[0-9])-(?![0-9])|(?<=\\p{L})-", "")
        .replaceAll("[^.,+%/0-9-]", "");
  }

  private static boolean wordsAreNear(List<String> a, List<String> b) {
    int slips = 0;
    for (int i = 0; i < a.size(); i++) {
      if (!a.get(i).equals(b.get(i))) {
        slips++;
        if (!isSlip(a.get(i), b.get(i))) {
          return false;
        }
      }
    }
    return slips <= 2;
  }

  private static boolean isSlip(String a, String b) {
    int shorter = Math.min(a.length(), b.length());
    if (shorter < SHORTEST_WORD) {
      return false;
    }
    int changes = LetterChanges.between(a, b);
    return changes <= (shorter >= LONG_WORD ? 2 : 1);
  }

  private static List<String> words(String name) {
    return List.of(ControlNames.plainLetters(name).trim().split("[^\\p{L}\\p{N}]+")).stream()
        .filter(word -> !word.isEmpty())
        .toList();
  }

  private static String digits(String text) {
    return text.replaceAll("[^0-9]+", " ").trim();
  }

  private static String digitsForLetters(String text) {
    boolean hasDigit = text.chars().anyMatch(c -> c >= '0' && c <= '9');
    return hasDigit ? text.replace('o', '0').replace('l', '1').replace('i', '1') : text;
  }
}
