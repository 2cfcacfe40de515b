package agro.notebook.jupyter;

/**
 * A pattern in which {@code *} stands for any text, {@code ?} for any character and {@code [a-z]}
 * or {@code [^a-z]} for one character of a kind. Matched by hand and not by a regular expression,
 * so that no pattern takes long.
 */
final class GlobPattern {

  private final int[] pattern;

  GlobPattern(String pattern) {
    this.pattern = pattern.codePoints().toArray();
  }

  /** Whether a whole text is of the pattern. */
  boolean matches(String text) {
    var characters = text.codePoints().toArray();
    var at = 0;
    var in = 0;
    var star = -1;
    var resume = 0;
    while (at < characters.length) {
      var next = in < pattern.length ? pattern[in] : -1;
      if (next == '*') {
        star = in++;
        resume = at;
      } else if (next != -1 && fits(in, characters[at])) {
        in = after(in);
        at++;
      } else if (star >= 0) {
        in = star + 1;
        at = ++resume;
      } else {
        return false;
      }
    }
    while (in < pattern.length && pattern[in] == '*') {
      in++;
    }
    return in == pattern.length;
  }

  private boolean fits(int in, int character) {
    if (pattern[in] == '?') {
      return true;
    }
    var end = endOfKind(in);
    return end < 0 ? pattern[in] == character : isOfKind(in + 1, end, character);
  }

  private int after(int in) {
    var end = endOfKind(in);
    return end < 0 ? in + 1 : end + 1;
  }

  /** Where the kind that begins here ends, or -1 when none begins here. */
  private int endOfKind(int in) {
    if (pattern[in] != '[') {
      return -1;
    }
    var from = in + 1 < pattern.length && pattern[in + 1] == '^' ? in + 3 : in + 2;
    for (var end = from; end < pattern.length; end++) {
      if (pattern[end] == ']') {
        return end;
      }
    }
    return -1;
  }

  private boolean isOfKind(int from, int end, int character) {
    var negated = pattern[from] == '^';
    var found = false;
    for (var at = negated ? from + 1 : from; at < end; at++) {
      if (at + 2 < end && pattern[at + 1] == '-') {
        found |= pattern[at] <= character && character <= pattern[at + 2];
        at += 2;
      } else {
        found |= pattern[at] == character;
      }
    }
    return found != negated;
  }
}
