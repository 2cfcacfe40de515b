package agro.notebook.kernel;

/**
 * A variable that a cell declared.
 *
 * @param name its name
 * @param type its type as written in Java, inferred for {@code var}
 */
public record DeclaredVariable(String name, String type) {}
