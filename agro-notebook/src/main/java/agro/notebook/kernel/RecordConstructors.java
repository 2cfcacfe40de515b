package agro.notebook.kernel;

import java.util.BitSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Lets a cell leave out the {@code public} of a record's constructor, as a source file may: the
 * shell makes every record public, whose constructor then must be public too.
 */
final class RecordConstructors {

  private static final Pattern RECORD = Pattern.compile("\\brecord\\s+(\\w+)\\s*[<(]");

  private RecordConstructors() {}

  /**
   * Makes the constructors public that have no modifier.
   *
   * @param cell the code of a cell
   * @return the same code with the same lines
   */
  static String madePublic(String cell) {
    var changed = cell;
    for (var name : RECORD.matcher(cell).results().map(found -> found.group(1)).toList()) {
      var text = JavaText.textIn(changed);
      var code = changed;
      changed =
          constructor(name)
              .matcher(code)
              .replaceAll(
                  found ->
                      Matcher.quoteReplacement(
                          beginsMember(code, text, found.start())
                              ? "public " + found.group()
                              : found.group()));
    }
    return changed;
  }

  /** A name that is followed by a body, with or without parameters. */
  private static Pattern constructor(String name) {
    return Pattern.compile(
        "\\b" + Pattern.quote(name) + "\\s*(?:\\([^)]*\\)\\s*(?:throws\\s[\\w\\s.,]+)?)?\\{");
  }

  /** Whether what stands before a position, comments left out, ends or opens something. */
  private static boolean beginsMember(String code, BitSet text, int at) {
    var before = at - 1;
    while (before >= 0 && (text.get(before) || Character.isWhitespace(code.charAt(before)))) {
      before--;
    }
    return !text.get(at) && before >= 0 && ";{})".indexOf(code.charAt(before)) >= 0;
  }
}
