package agro.notebook.insight;

/** What a name stands for, with the word by which front ends choose a symbol. */
public enum NameKind {
  /** A method. */
  METHOD("function"),
  /** A class. */
  CLASS("class"),
  /** A record. */
  RECORD("class"),
  /** An enum. */
  ENUM("enum"),
  /** An interface. */
  INTERFACE("interface"),
  /** An annotation type. */
  ANNOTATION("interface"),
  /** A parameter of a generic type or method. */
  TYPE_PARAMETER("type"),
  /** A variable of a cell, a local variable or a parameter. */
  VARIABLE("instance"),
  /** A field. */
  FIELD("property"),
  /** A constant of an enum. */
  CONSTANT("enum"),
  /** A word of the language. */
  KEYWORD("keyword"),
  /** A package. */
  PACKAGE("module"),
  /** An instruction to the notebook. */
  MAGIC("magic");

  private final String word;

  NameKind(String word) {
    this.word = word;
  }

  /**
   * The word that front ends know.
   *
   * @return for example {@code "function"}
   */
  public String word() {
    return word;
  }
}
