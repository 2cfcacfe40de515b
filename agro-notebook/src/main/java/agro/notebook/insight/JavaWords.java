package agro.notebook.insight;

import java.util.List;
import java.util.stream.Stream;
import javax.lang.model.SourceVersion;

/** The words of the language, by where they can stand. */
final class JavaWords {

  private static final List<String> EXPRESSION =
      List.of("false", "instanceof", "new", "null", "super", "switch", "this", "true");
  private static final List<String> PRIMITIVE =
      List.of("boolean", "byte", "char", "double", "float", "int", "long", "short");
  private static final List<String> STATEMENT =
      List.of(
          "abstract",
          "assert",
          "break",
          "case",
          "catch",
          "class",
          "continue",
          "default",
          "do",
          "else",
          "enum",
          "extends",
          "final",
          "finally",
          "for",
          "if",
          "implements",
          "import",
          "interface",
          "native",
          "private",
          "protected",
          "public",
          "record",
          "return",
          "sealed",
          "static",
          "synchronized",
          "throw",
          "throws",
          "transient",
          "try",
          "var",
          "void",
          "volatile",
          "while",
          "yield");

  private JavaWords() {}

  /**
   * The words that may stand behind something.
   *
   * @param beginsStatement whether a statement can begin there
   * @return the words, sorted within their groups
   */
  static List<String> at(boolean beginsStatement) {
    return beginsStatement
        ? Stream.of(STATEMENT, EXPRESSION, PRIMITIVE).flatMap(List::stream).sorted().toList()
        : Stream.of(EXPRESSION, PRIMITIVE).flatMap(List::stream).sorted().toList();
  }

  /**
   * Whether a word belongs to the language.
   *
   * @param word any word
   * @return true for a word that cannot name anything
   */
  static boolean isReserved(String word) {
    return SourceVersion.isKeyword(word);
  }
}
