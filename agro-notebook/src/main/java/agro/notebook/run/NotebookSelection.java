package agro.notebook.run;

import agro.report.InputProblem;
import agro.report.SourceLocation;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The notebooks that a command line means: files as they are, and all notebooks below folders. */
public final class NotebookSelection {

  private static final String ENDING = ".ipynb";

  /**
   * A notebook and how its results are called.
   *
   * @param file the notebook file
   * @param stem the name of its results without ending, in the folder for results; notebooks in
   *     folders below the one that was named keep their folder
   */
  public record Selected(Path file, Path stem) {}

  private final Path results;
  private final List<Selected> selected = new ArrayList<>();
  private final Set<Path> seen = new HashSet<>();

  private NotebookSelection(Path results) {
    this.results = results.toAbsolutePath().normalize();
  }

  /**
   * Finds the notebooks.
   *
   * @param given files and folders; a folder stands for the notebooks in it and below it in the
   *     order of their names, without hidden files and folders, copies of failed runs and results
   * @param results the folder for results, which is not searched
   * @return each notebook once, in order; a file that does not exist is among them
   * @throws InputProblem when a folder holds no notebook
   */
  public static List<Selected> of(List<Path> given, Path results) {
    var selection = new NotebookSelection(results);
    for (var path : given) {
      if (Files.isDirectory(path)) {
        selection.addFolder(path);
      } else {
        selection.add(path, path.toAbsolutePath().getFileName());
      }
    }
    return List.copyOf(selection.selected);
  }

  private void add(Path file, Path name) {
    if (seen.add(real(file))) {
      var last = name.getFileName().toString();
      selected.add(new Selected(file, name.resolveSibling(withoutEnding(last))));
    }
  }

  private static String withoutEnding(String name) {
    return name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
  }

  private static Path real(Path file) {
    try {
      return file.toRealPath();
    } catch (IOException missing) {
      return file.toAbsolutePath().normalize();
    }
  }

  private void addFolder(Path folder) {
    var found = new ArrayList<Path>();
    try {
      Files.walkFileTree(folder, new Search(folder, found));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(folder + " could not be searched", unreadable);
    }
    if (found.isEmpty()) {
      throw InputProblem.at(SourceLocation.file(folder.toString()), "this folder holds no notebook")
          .expected("files that end in .ipynb")
          .because("there is nothing to run")
          .mend("check the name of the folder and the folder you are in");
    }
    found.sort((a, b) -> order(folder.relativize(a)).compareTo(order(folder.relativize(b))));
    found.forEach(file -> add(file, folder.relativize(file)));
  }

  /** The same order on every system. */
  private static String order(Path relative) {
    return relative.toString().replace('\\', '/');
  }

  private final class Search extends SimpleFileVisitor<Path> {
    private final Path root;
    private final List<Path> found;

    Search(Path root, List<Path> found) {
      this.root = root;
      this.found = found;
    }

    @Override
    public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes about) {
      var isResults = !folder.equals(root) && folder.toAbsolutePath().normalize().equals(results);
      var skip = isResults || (!folder.equals(root) && isHidden(folder));
      return skip ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes about) {
      var name = file.getFileName().toString();
      if (name.endsWith(ENDING) && !name.endsWith(RunTask.FAILED + ENDING) && !isHidden(file)) {
        found.add(file);
      }
      return FileVisitResult.CONTINUE;
    }

    /** Among them the folders in which notebook programs keep checkpoints. */
    private static boolean isHidden(Path path) {
      return path.getFileName().toString().startsWith(".");
    }
  }
}
