package agro.units;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Which unit a written word is. */
final class UnitLexicon {

  /** Spellings by family; a family is filled when a word is first looked for in it. */
  private static final List<Map<String, Unit<?>>> FAMILIES = new ArrayList<>();

  private static final int FAMILY_COUNT = 7;

  private UnitLexicon() {}

  /**
   * What a spelling stands for.
   *
   * @param spelling words with single blanks and without abbreviating points
   * @return the unit or the candidates, or null if nobody writes this
   */
  static UnitWord find(String spelling) {
    var capitals = spelling.length() <= 3 ? AmbiguousWords.capitals(spelling) : null;
    if (capitals != null) {
      return capitals;
    }
    var lower = TextCursor.lower(spelling);
    var bare = AmbiguousWords.find(lower);
    if (bare != null) {
      return bare;
    }
    var marked = marked(lower);
    if (marked != null) {
      return marked;
    }
    var exact = clear(spelling);
    if (exact != null) {
      return UnitWord.of(exact);
    }
    var clear = lower.equals(spelling) ? null : clear(lower);
    return clear != null ? UnitWord.of(clear) : land(lower);
  }

  private static Unit<?> clear(String spelling) {
    for (int i = 0; i < FAMILY_COUNT; i++) {
      var found = family(i).get(spelling);
      if (found != null) {
        return found;
      }
    }
    return null;
  }

  private static Map<String, Unit<?>> family(int index) {
    var families = FAMILIES;
    synchronized (families) {
      while (families.size() <= index) {
        families.add(filled(families.size()));
      }
      return families.get(index);
    }
  }

  private static Map<String, Unit<?>> filled(int index) {
    var words = new HashMap<String, Unit<?>>(256);
    switch (index) {
      case 0 -> {
        for (var unit : VolumeUnit.values()) {
          add(words, unit, unit.spellings());
        }
      }
      case 2 -> {
        for (var unit : MassUnit.values()) {
          add(words, unit, unit.spellings());
        }
      }
      case 1 -> {
        for (var unit : AreaUnit.values()) {
          add(words, unit, unit.spellings());
        }
      }
      case 3 -> {
        for (var unit : LengthUnit.values()) {
          add(words, unit, unit.spellings());
        }
      }
      case 4 -> {
        for (var unit : WorkTimeUnit.values()) {
          add(words, unit, unit.spellings());
        }
      }
      case 5 -> {
        for (var unit : PressureUnit.values()) {
          add(words, unit, unit.spellings());
        }
      }
      default -> {
        for (var unit : Counted.values()) {
          add(words, unit, unit.spellings());
        }
        words.put("mph", SpeedUnit.MILE_PER_HOUR);
      }
    }
    return words;
  }

  private static void add(Map<String, Unit<?>> words, Unit<?> unit, List<String> spellings) {
    put(words, unit.symbol(), unit);
    put(words, unit.words(), unit);
    for (int i = 0; i < spellings.size(); i++) {
      put(words, spellings.get(i), unit);
    }
  }

  private static void put(Map<String, Unit<?>> words, String spelling, Unit<?> unit) {
    words.putIfAbsent(spelling, unit);
    var lower = TextCursor.lower(spelling);
    if (!lower.equals(spelling)) {
      words.putIfAbsent(lower, unit);
    }
  }

  private static UnitWord marked(String lower) {
    if (lower.charAt(0) == '%') {
      return choose("%", unbracketed(lower.substring(1).strip()));
    }
    int open = lower.indexOf('(');
    if (open > 0 && lower.charAt(lower.length() - 1) == ')') {
      return choose(
          lower.substring(0, open).strip(), lower.substring(open + 1, lower.length() - 1).strip());
    }
    int last = lower.lastIndexOf(' ');
    if (last < 0) {
      return null;
    }
    var behind = choose(lower.substring(0, last), lower.substring(last + 1));
    if (behind != null) {
      return behind;
    }
    int first = lower.indexOf(' ');
    var before = choose(lower.substring(first + 1), lower.substring(0, first));
    if (before != null) {
      return before;
    }
    int by = lower.indexOf(" by ");
    return by < 0 ? null : choose(lower.substring(0, by), lower.substring(by + 1));
  }

  private static String unbracketed(String mark) {
    return mark.length() > 2 && mark.charAt(0) == '(' && mark.charAt(mark.length() - 1) == ')'
        ? mark.substring(1, mark.length() - 1).strip()
        : mark;
  }

  private static UnitWord choose(String word, String mark) {
    var ambiguous = AmbiguousWords.find(word);
    return ambiguous == null ? null : ambiguous.with(mark);
  }

  private static UnitWord land(String lower) {
    if (LandNames.isKnown(lower)) {
      var units = LandUnit.named(lower);
      return units.size() == 1 ? UnitWord.of(units.get(0)) : bareLand(lower, units);
    }
    int open = lower.indexOf('(');
    if (open > 0 && lower.charAt(lower.length() - 1) == ')') {
      return atPlace(
          lower.substring(0, open).strip(), lower.substring(open + 1, lower.length() - 1).strip());
    }
    int last = lower.lastIndexOf(' ');
    return last < 0 ? null : atPlace(lower.substring(last + 1), lower.substring(0, last));
  }

  private static UnitWord bareLand(String word, List<LandUnit> units) {
    return new UnitWord(word, List.copyOf(units), List.of());
  }

  private static UnitWord atPlace(String name, String place) {
    if (!LandNames.isKnown(name)) {
      return null;
    }
    for (var unit : LandUnit.named(name)) {
      for (var known : unit.places()) {
        if (known.equalsIgnoreCase(place)) {
          return UnitWord.of(unit);
        }
      }
    }
    return null;
  }

  /** The known spellings that are nearest to a word, of each unit one; empty if none is near. */
  static List<String> nearest(String word) {
    var lower = TextCursor.lower(word);
    int least = word.length() <= 2 ? 0 : word.length() <= 5 ? 1 : 2;
    var known = new ArrayList<String>();
    for (int i = 0; i < FAMILY_COUNT; i++) {
      known.addAll(family(i).keySet());
    }
    known.addAll(AmbiguousWords.all());
    known.addAll(RateThings.all());
    Collections.sort(known);
    var found = new ArrayList<String>();
    for (var candidate : known) {
      int distance =
          candidate.length() > 1 ? SpellingDistance.between(lower, candidate, least) : 99;
      if (distance < least) {
        found.clear();
        least = distance;
      }
      if (distance == least && found.size() < 4 && isNew(candidate, found)) {
        found.add(candidate);
      }
    }
    return found;
  }

  private static boolean isNew(String candidate, List<String> found) {
    var word = clear(candidate);
    for (var other : found) {
      if (word != null && word.equals(clear(other))) {
        return false;
      }
    }
    return true;
  }
}
