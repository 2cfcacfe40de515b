package agro.weather.log;

import java.util.ArrayList;
import java.util.List;

/** Cells with blanks between them, in runs or in columns of fixed width. */
final class BlankCells {

  private BlankCells() {}

  static String trimmed(String text, int from, int to) {
    int start = from;
    int end = to;
    while (start < end && isBlank(text.charAt(start))) {
      start++;
    }
    while (end > start && isBlank(text.charAt(end - 1))) {
      end--;
    }
    return text.substring(start, end);
  }

  static boolean isBlank(char c) {
    return c == ' ' || c == '\t' || c == '\u00A0' || c == '\u202F' || c == '\uFEFF';
  }

  /** Words between blanks; a date, a clock and AM or PM in a row are one cell. */
  static List<String> split(String line) {
    var cells = new ArrayList<String>();
    for (var word : words(line)) {
      int last = cells.size() - 1;
      boolean joins = last >= 0 && joins(cells.get(last), word);
      if (joins) {
        cells.set(last, cells.get(last) + " " + word);
      } else {
        cells.add(word);
      }
    }
    return cells;
  }

  private static boolean joins(String before, String word) {
    if (isHalfDay(word)) {
      return WrittenTime.of(before).map(WrittenTime::hasClock).orElse(false);
    }
    return WrittenTime.of(word).map(WrittenTime::isClockOnly).orElse(false)
        && WrittenTime.of(before).map(WrittenTime::isDateOnly).orElse(false);
  }

  private static boolean isHalfDay(String word) {
    return word.equalsIgnoreCase("AM") || word.equalsIgnoreCase("PM");
  }

  /** Words between blanks; words in double quotes keep theirs. */
  static List<String> words(String line) {
    var words = new ArrayList<String>();
    int i = 0;
    while (i < line.length()) {
      if (isBlank(line.charAt(i))) {
        i++;
        continue;
      }
      int end = i;
      if (line.charAt(i) == '"' && line.indexOf('"', i + 1) > 0) {
        end = line.indexOf('"', i + 1);
        words.add(trimmed(line, i + 1, end));
        i = end + 1;
        continue;
      }
      while (end < line.length() && !isBlank(line.charAt(end))) {
        end++;
      }
      words.add(line.substring(i, end));
      i = end;
    }
    return words;
  }

  /** Names between two or more blanks, where names may hold single ones. */
  static List<String> wideWords(String line) {
    var words = new ArrayList<String>();
    for (var part : line.strip().split("\\s{2,}|\t", -1)) {
      if (!part.isBlank()) {
        words.add(part.strip());
      }
    }
    return words;
  }

  static List<String> cut(String line, List<Integer> starts) {
    var cells = new ArrayList<String>();
    for (int i = 0; i < starts.size(); i++) {
      int from = Math.min(line.length(), i == 0 ? 0 : starts.get(i));
      int to = i + 1 < starts.size() ? Math.min(line.length(), starts.get(i + 1)) : line.length();
      cells.add(trimmed(line, from, Math.max(from, to)));
    }
    return cells;
  }

  /** Where fields begin: after each column of characters that is blank in every line. */
  static List<Integer> fieldStarts(List<String> lines) {
    int width = lines.stream().mapToInt(String::length).max().orElse(0);
    var used = new boolean[width];
    for (var line : lines) {
      for (int i = 0; i < line.length(); i++) {
        used[i] |= !isBlank(line.charAt(i));
      }
    }
    var starts = new ArrayList<Integer>();
    for (int i = 0; i < width; i++) {
      if (used[i] && (i == 0 || !used[i - 1])) {
        // A field begins right behind the blank column, since its numbers are set to the right.
        starts.add(starts.isEmpty() ? 0 : i);
      }
    }
    return starts;
  }
}
