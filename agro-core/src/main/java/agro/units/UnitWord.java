package agro.units;

import java.util.List;

/**
 * What a word on a label may stand for: one unit, or several of which the text has to choose one.
 *
 * @param word the word as it is known
 * @param candidates the units it may stand for
 * @param marks for each candidate the marks that choose it, in lower case, such as {@code "us"}
 * @param system the mark that chose the only candidate, or empty
 * @param trap why the word is refused although it looks like its candidates, or empty
 */
record UnitWord(
    String word, List<Unit<?>> candidates, List<List<String>> marks, String system, String trap) {

  UnitWord(String word, List<Unit<?>> candidates, List<List<String>> marks) {
    this(word, candidates, marks, "", "");
  }

  static UnitWord of(Unit<?> unit) {
    return new UnitWord(unit.symbol(), List.of(unit), List.of());
  }

  boolean isClear() {
    return trap.isEmpty() && candidates.size() == 1;
  }

  Unit<?> unit() {
    return candidates.get(0);
  }

  /** The word with a mark beside it, or null if the mark does not choose one candidate. */
  UnitWord with(String mark) {
    var standard = standardMark(mark);
    for (int i = 0; i < marks.size(); i++) {
      if (marks.get(i).contains(standard)) {
        return new UnitWord(word, List.of(candidates.get(i)), List.of(), standard, "");
      }
    }
    return null;
  }

  /** The short form of a mark in lower case. */
  static String standardMark(String mark) {
    return switch (mark) {
      case "usa", "american" -> "us";
      case "imperial", "uk", "british" -> "imp";
      case "australian", "australia" -> "au";
      default -> mark;
    };
  }
}
