package agro.notebook.magic;

import agro.notebook.kernel.CellMagic;
import agro.notebook.kernel.CellMagicAnswer;
import agro.notebook.kernel.CellMagicCall;
import agro.notebook.kernel.CellMagicContext;
import agro.notebook.kernel.CellMagicProblem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Fetches the dependencies that a Maven project names, in a file or in the cell.
 *
 * @param libraries what was fetched so far
 */
record PomMagic(LibraryShelf libraries) implements CellMagic {

  private static final Set<String> SCOPES = Set.of("compile", "runtime", "provided", "test");

  @Override
  public String name() {
    return "loadFromPOM";
  }

  @Override
  public Set<Form> forms() {
    return EnumSet.allOf(Form.class);
  }

  @Override
  public String arguments() {
    return "[file] [scope ...]";
  }

  @Override
  public String summary() {
    return "adds the dependencies of a project file, or those in the cell as XML; scopes compile"
        + " and runtime unless others are named";
  }

  @Override
  public CellMagicAnswer run(CellMagicCall call, CellMagicContext context)
      throws CellMagicProblem, InterruptedException, IOException {
    return call.form() == Form.LINE ? fromFile(call) : fromBody(call);
  }

  private CellMagicAnswer fromFile(CellMagicCall call)
      throws CellMagicProblem, InterruptedException {
    var words = call.words();
    if (words.isEmpty()) {
      throw new CellMagicProblem(
          call.written()
              + " needs a file, for example %loadFromPOM pom.xml; in the form"
              + " %%loadFromPOM the dependencies stand on the lines below");
    }
    var file = FilePattern.of(words.get(0)).path();
    if (Files.isDirectory(file)) {
      file = file.resolve("pom.xml");
    }
    if (!Files.isRegularFile(file)) {
      throw new CellMagicProblem(
          "there is no project file \""
              + words.get(0)
              + "\"; looked for "
              + file.toAbsolutePath().normalize());
    }
    return fetched(file, words.get(0), words.subList(1, words.size()));
  }

  private CellMagicAnswer fromBody(CellMagicCall call)
      throws CellMagicProblem, InterruptedException, IOException {
    if (call.body().isBlank()) {
      throw new CellMagicProblem(
          call.written()
              + " needs dependencies on the lines below, each as <dependency> with"
              + " <groupId>, <artifactId> and <version>");
    }
    var file = Files.createTempFile("notebook-", ".pom.xml");
    try {
      Files.writeString(file, PomText.project(call.body()));
      return fetched(file, "the cell, counted from the line below " + call.written(), call.words());
    } finally {
      Files.deleteIfExists(file);
    }
  }

  private CellMagicAnswer fetched(Path file, String name, List<String> scopes)
      throws CellMagicProblem, InterruptedException {
    for (var scope : scopes) {
      if (!SCOPES.contains(scope)) {
        throw new CellMagicProblem(
            "\""
                + scope
                + "\" is no scope; expected some of "
                + String.join(", ", new TreeSet<>(SCOPES)));
      }
    }
    var wanted = scopes.isEmpty() ? Set.of("compile", "runtime") : Set.copyOf(scopes);
    return CellMagicAnswer.addToClassPath(libraries.fetchDependencies(file, name, wanted));
  }
}
