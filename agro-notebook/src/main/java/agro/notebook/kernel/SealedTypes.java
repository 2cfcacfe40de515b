package agro.notebook.kernel;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Lets a cell leave out the {@code permits} of a sealed type, as a source file may: the shell
 * compiles each declaration on its own, so the types of the cell that extend it are named for it.
 */
final class SealedTypes {

  private static final Pattern SEALED =
      Pattern.compile(
          "\\bsealed\\s+(?:\\w+\\s+)*?(?:interface|class)\\s+(\\w+)(?:\\s*<[^{]*>)?([^{;]*)\\{");

  private SealedTypes() {}

  /**
   * Names the permitted types where a cell leaves them out.
   *
   * @param code the code of a cell
   * @return the same code with the same lines, sealed types completed
   */
  static String withPermits(String code) {
    if (!code.contains("sealed")) {
      return code;
    }
    var text = JavaText.textIn(code);
    return SEALED
        .matcher(code)
        .replaceAll(
            found ->
                text.get(found.start())
                    ? Matcher.quoteReplacement(found.group())
                    : completed(found.group(), found, code));
  }

  private static String completed(String header, MatchResult found, String code) {
    var heirs = heirs(found.group(1), code);
    var complete =
        found.group(2).contains("permits") || heirs.isEmpty() || nests(found, code)
            ? header
            : header.substring(0, header.length() - 1)
                + "permits "
                + String.join(", ", heirs)
                + " {";
    return Matcher.quoteReplacement(complete);
  }

  /** A sealed type whose own body declares its heirs needs no help. */
  private static boolean nests(MatchResult found, String code) {
    var depth = 1;
    var at = found.end();
    while (at < code.length() && depth > 0) {
      depth += code.charAt(at) == '{' ? 1 : code.charAt(at) == '}' ? -1 : 0;
      at++;
    }
    return !heirs(found.group(1), code.substring(found.end(), at)).isEmpty();
  }

  private static Set<String> heirs(String parent, String code) {
    var heir =
        Pattern.compile(
            "\\b(?:class|record|interface|enum)\\s+(\\w+)[^{;]*?\\b(?:implements|extends)\\b[^{]*?\\b"
                + Pattern.quote(parent)
                + "\\b[^{]*\\{");
    var names = new LinkedHashSet<String>();
    heir.matcher(code).results().forEach(result -> names.add(result.group(1)));
    return names;
  }
}
