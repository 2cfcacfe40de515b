package agro.notebook.kernel;

import agro.notebook.display.Renderers;
import agro.notebook.kernel.CellMagic.Form;
import agro.notebook.kernel.CellMagicContext.Declaration;
import agro.notebook.kernel.CellMagicContext.Kind;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.Set;
import jdk.jshell.ImportSnippet;
import jdk.jshell.MethodSnippet;
import jdk.jshell.Snippet;
import jdk.jshell.Snippet.SubKind;
import jdk.jshell.TypeDeclSnippet;
import jdk.jshell.VarSnippet;

/** The magics of one evaluator, loaded when a cell calls the first one. */
final class CellMagics {

  private static final int DEEPEST = 20;

  private final EvaluatorState state;
  private final Set<Path> classPath = new LinkedHashSet<>();
  private Map<String, CellMagic> byName;
  private int depth;

  CellMagics(EvaluatorState state) {
    this.state = state;
  }

  private synchronized Map<String, CellMagic> byName() {
    if (byName == null) {
      var found = new LinkedHashMap<String, CellMagic>();
      var loader = CellMagics.class.getClassLoader();
      for (var library : ServiceLoader.load(CellMagicLibrary.class, loader)) {
        for (var magic : library.magics()) {
          found.putIfAbsent(magic.name(), magic);
          magic.aliases().forEach(alias -> found.putIfAbsent(alias, magic));
        }
      }
      byName = found;
    }
    return byName;
  }

  /**
   * The magic of a call.
   *
   * @param form how it is called
   * @param name the name it is called by
   * @return the magic
   * @throws CellMagicProblem when there is none of that name, or not in that form
   */
  CellMagic find(Form form, String name) throws CellMagicProblem {
    var magic = byName().get(name);
    if (magic == null) {
      throw new CellMagicProblem(
          "there is no magic " + form.mark() + name + "; " + instead(form, name));
    }
    if (!magic.forms().contains(form)) {
      var other = form == Form.LINE ? Form.CELL : Form.LINE;
      throw new CellMagicProblem(
          form.mark()
              + name
              + " is written "
              + other.mark()
              + name
              + (other == Form.CELL ? ", on the first line of a cell" : ", on a line of its own"));
    }
    return magic;
  }

  private String instead(Form form, String name) {
    var near =
        byName().entrySet().stream()
            .filter(entry -> entry.getValue().forms().contains(form))
            .map(Map.Entry::getKey)
            .filter(known -> isNear(known, name))
            .map(known -> form.mark() + known)
            .toList();
    return (near.isEmpty() ? "" : "is it " + String.join(" or ", near) + "? ")
        + "%magics lists them all";
  }

  private static boolean isNear(String known, String written) {
    var one = known.toLowerCase(Locale.ROOT);
    var other = written.toLowerCase(Locale.ROOT);
    return one.startsWith(other)
        || other.startsWith(one)
        || edits(one, other) <= Math.max(1, other.length() / 3);
  }

  /** How many letters have to be put in, left out or changed to make one word of another. */
  private static int edits(String one, String other) {
    var row = new int[other.length() + 1];
    for (var j = 0; j < row.length; j++) {
      row[j] = j;
    }
    for (var i = 1; i <= one.length(); i++) {
      var diagonal = row[0];
      row[0] = i;
      for (var j = 1; j < row.length; j++) {
        var changed = diagonal + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(changed, Math.min(row[j], row[j - 1]) + 1);
      }
    }
    return row[other.length()];
  }

  /**
   * The names of all magics, aliases too.
   *
   * @return names without per cent signs
   */
  Set<String> names() {
    return byName().keySet();
  }

  /**
   * How all magics may be called.
   *
   * @return names with their per cent signs
   */
  List<String> calls() {
    return byName().entrySet().stream()
        .flatMap(
            entry -> entry.getValue().forms().stream().map(form -> form.mark() + entry.getKey()))
        .toList();
  }

  /**
   * Makes jars and folders visible to the compiler and to running cells, with the renderers and the
   * resources in them.
   *
   * @param entries jars and folders
   * @param host the cell that runs
   * @throws Throwable when looking for renderers was interrupted
   */
  void addToClassPath(List<Path> entries, CellMagicRun.Host host) throws Throwable {
    var added = false;
    for (var entry : entries) {
      var absolute = entry.toAbsolutePath().normalize();
      if (classPath.add(absolute)) {
        state.shell().addToClasspath(absolute.toString());
        state.insight().addToClassPath(absolute);
        added = true;
      }
    }
    if (added) {
      host.onThread(
          () -> {
            Renderers.addServicesOf(state.loader());
            return null;
          });
    }
  }

  /**
   * Counts code that is evaluated on behalf of a magic, which may call magics itself.
   *
   * @throws CellMagicProblem when it goes too deep
   */
  void enter() throws CellMagicProblem {
    if (depth >= DEEPEST) {
      throw new CellMagicProblem(
          "code that loads code goes " + DEEPEST + " levels deep; does a file load itself?");
    }
    depth++;
  }

  /** Leaves what {@link #enter} entered. */
  void leave() {
    depth--;
  }

  /** What a magic may know. */
  CellMagicContext context() {
    var declarations = new ArrayList<Declaration>();
    state.shell().snippets().forEach(snippet -> declaration(snippet).ifPresent(declarations::add));
    return new CellMagicContext(
        new ArrayList<>(new LinkedHashSet<>(byName().values())),
        declarations,
        List.copyOf(classPath));
  }

  private Optional<Declaration> declaration(Snippet snippet) {
    if (!state.shell().status(snippet).isActive()) {
      return Optional.empty();
    }
    if (snippet instanceof VarSnippet variable) {
      return variable.subKind() == SubKind.TEMP_VAR_EXPRESSION_SUBKIND
          ? Optional.empty()
          : Optional.of(
              new Declaration(
                  Kind.VARIABLE, variable.name(), variable.typeName(), value(variable)));
    }
    if (snippet instanceof MethodSnippet method) {
      return Optional.of(new Declaration(Kind.METHOD, method.name(), method.signature(), null));
    }
    if (snippet instanceof TypeDeclSnippet type) {
      var kind = type.subKind().name().replace("_SUBKIND", "").toLowerCase(Locale.ROOT);
      return Optional.of(new Declaration(Kind.TYPE, type.name(), kind, null));
    }
    if (snippet instanceof ImportSnippet imported) {
      var full = (imported.isStatic() ? "static " : "") + imported.fullname();
      return Optional.of(new Declaration(Kind.IMPORT, imported.name(), full, null));
    }
    return Optional.empty();
  }

  private Object value(VarSnippet variable) {
    try {
      state.shell().varValue(variable);
      var field = state.control().takeField();
      return field == null ? null : field.get(null);
    } catch (IllegalArgumentException
        | IllegalStateException
        | IllegalAccessException
        | LinkageError unreadable) {
      return null;
    }
  }
}
