package agro.notebook.insight;

import agro.notebook.display.MimeBundle;
import agro.notebook.insight.Completeness.State;
import agro.notebook.insight.Completions.Candidate;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import jdk.jshell.JShell;

/**
 * What can be said about code in the light of everything that cells have declared. Whatever the
 * code and wherever the cursor, nothing is thrown: the answer is then that nothing is known.
 */
public final class CodeInsight {

  private final SourceCompiler compiler = new SourceCompiler();
  private final CompletionSearch search;
  private final InspectionSearch inspections;
  private final CompletenessCheck check;
  private final SourceArchive archive;
  private final JavadocFinder finder;
  private final List<Path> added = new ArrayList<>();
  private final SlipHints hints = new SlipHints(new CellSurroundings());
  private TypeIndex index;

  /**
   * Insight into the code of one shell. Costs nothing until it is asked.
   *
   * @param shell the shell that evaluates the cells
   */
  public CodeInsight(JShell shell) {
    this(shell, SourceArchive.ofThisJdk());
  }

  /**
   * Insight that takes the documentation of the JDK from a stated archive.
   *
   * @param shell the shell that evaluates the cells
   * @param jdkSources a file like a JDK's {@code src.zip}; it need not exist
   */
  CodeInsight(JShell shell, Path jdkSources) {
    this.archive = new SourceArchive(jdkSources, TypeIndex.ownClassPath());
    this.finder = new JavadocFinder(compiler, archive);
    this.inspections = new InspectionSearch(shell, compiler);
    this.check = new CompletenessCheck(compiler);
    this.search = new CompletionSearch(shell, compiler, this::index);
  }

  private synchronized TypeIndex index() {
    if (index == null) {
      var paths = new ArrayList<>(TypeIndex.ownClassPath());
      paths.addAll(added);
      index = TypeIndex.of(paths);
    }
    return index;
  }

  /**
   * Makes the names of a library known that was added to the class path of the cells.
   *
   * @param path a jar or a folder of classes
   */
  public synchronized void addToClassPath(Path path) {
    added.add(path);
    compiler.addToClassPath(path);
    archive.add(path);
    index = null;
  }

  /**
   * How the word at the cursor may go on.
   *
   * @param code the code of the cell as typed so far
   * @param cursor position in UTF-16 units, 0 to the length of the code
   * @return the candidates, possibly none
   */
  public Completions completions(String code, int cursor) {
    return completions(code, cursor, List.of());
  }

  /**
   * How the word at the cursor may go on, where lines may also be instructions to the notebook.
   *
   * @param code the code of the cell as typed so far
   * @param cursor position in UTF-16 units, 0 to the length of the code
   * @param instructions the names of instructions, with their percent signs
   * @return the candidates, possibly none
   */
  public synchronized Completions completions(
      String code, int cursor, Collection<String> instructions) {
    var at = CursorWord.whole(code, cursor);
    try {
      var name = MagicLines.nameAt(code, at);
      if (name >= 0) {
        return instructions(code.substring(name, at), name, at, instructions);
      }
      return MagicLines.takesCell(code)
          ? Completions.none(at)
          : search.at(MagicLines.masked(code, at), at);
    } catch (RuntimeException | Error compilerTrouble) {
      return Completions.none(at);
    }
  }

  private static Completions instructions(
      String typed, int from, int to, Collection<String> instructions) {
    var found =
        instructions.stream()
            .filter(one -> one.startsWith(typed))
            .distinct()
            .sorted()
            .map(one -> new Candidate(one, NameKind.MAGIC, ""))
            .toList();
    return new Completions(from, to, found);
  }

  /**
   * What the name or the call at the cursor stands for.
   *
   * @param code the code of the cell
   * @param cursor position in UTF-16 units
   * @param detailed whether the whole documentation is wanted, not only the signature
   * @return the documentation; empty when there is none
   */
  public synchronized Optional<MimeBundle> inspection(String code, int cursor, boolean detailed) {
    var at = CursorWord.whole(code, cursor);
    try {
      if (MagicLines.takesCell(code)) {
        return Optional.empty();
      }
      var found = inspections.at(MagicLines.masked(code, at), at);
      return new Inspection(finder, detailed).of(found);
    } catch (RuntimeException | Error compilerTrouble) {
      return Optional.empty();
    }
  }

  /**
   * Whether code can be evaluated as it stands.
   *
   * @param code the code of a cell
   * @return the verdict
   */
  public synchronized Completeness completeness(String code) {
    try {
      return MagicLines.takesCell(code)
          ? new Completeness(State.COMPLETE, "")
          : check.of(MagicLines.masked(code, -1));
    } catch (RuntimeException | Error compilerTrouble) {
      return new Completeness(State.UNKNOWN, "");
    }
  }

  /**
   * What a reader should do about code that the compiler refused.
   *
   * @param slip what the compiler said
   * @return one or two sentences; empty when nothing helps beyond the message
   */
  public synchronized Optional<String> hint(CompilerSlip slip) {
    try {
      return hints.hint(slip);
    } catch (RuntimeException | Error compilerTrouble) {
      return Optional.empty();
    }
  }

  /**
   * What a reader should do about an exception.
   *
   * @param thrown the exception
   * @param message its message
   * @param line the line of the cell that threw it, possibly empty
   * @return one or two sentences; empty when nothing helps beyond the message
   */
  public synchronized Optional<String> hint(Throwable thrown, String message, String line) {
    try {
      return hints.hint(thrown, message, line);
    } catch (RuntimeException | Error ownTrouble) {
      return Optional.empty();
    }
  }

  /**
   * What a reader should do about something that a declaration waits for.
   *
   * @param declaration what is missing, as the shell names it, for example {@code class Sum}
   * @return a sentence; empty when nothing helps beyond the message
   */
  public synchronized Optional<String> missing(String declaration) {
    try {
      return hints.missing(declaration);
    } catch (RuntimeException | Error compilerTrouble) {
      return Optional.empty();
    }
  }

  /** What hints ask about the code around a slip. */
  private final class CellSurroundings implements Surroundings {

    @Override
    public List<String> namesAt(String code, int at) {
      return search.namesAt(MagicLines.masked(code, -1), at);
    }

    @Override
    public List<String> signaturesAt(String code, int at, String name) {
      return search.signaturesAt(MagicLines.masked(code, -1), at, name);
    }

    @Override
    public TypeIndex index() {
      return CodeInsight.this.index();
    }
  }
}
