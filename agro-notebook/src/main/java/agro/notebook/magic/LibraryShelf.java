package agro.notebook.magic;

import agro.notebook.kernel.CellMagicProblem;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/**
 * The libraries that were fetched for one evaluator. Opens the resolver when it is needed first.
 */
final class LibraryShelf {

  private final MavenPlace place;
  private final Map<String, String> versions = new HashMap<>();
  private final OwnLibraries own = new OwnLibraries(LibraryShelf.class.getClassLoader());
  private volatile MavenSession session;

  LibraryShelf(MavenPlace place) {
    this.place = place;
  }

  private interface Work<T> {
    T on(MavenSession session) throws CellMagicProblem;
  }

  /**
   * Fetches libraries with what they need.
   *
   * @param wanted the libraries
   * @return the files for the class path, those that are there already left out
   */
  List<Path> fetch(List<MavenCoordinates> wanted) throws CellMagicProblem, InterruptedException {
    var found = work(open -> open.fetch(wanted, this::standing));
    return shelved(found);
  }

  /**
   * Fetches what a project needs.
   *
   * @param project a project file
   * @param name how messages call it
   * @param scopes the scopes of its dependencies that are wanted
   * @return the files for the class path, those that are there already left out
   */
  List<Path> fetchDependencies(Path project, String name, Set<String> scopes)
      throws CellMagicProblem, InterruptedException {
    var found = work(open -> open.fetchDependencies(project, name, scopes, this::standing));
    return shelved(found);
  }

  /**
   * Adds a repository.
   *
   * @param id its name
   * @param address where it is
   * @return a sentence about it
   */
  String addRepository(String id, String address) throws CellMagicProblem, InterruptedException {
    return work(open -> open.addRepository(id, address));
  }

  /**
   * Works on a thread of its own, so that an interrupt ends the waiting at once although a socket
   * does not listen to it.
   */
  private <T> T work(Work<T> work) throws CellMagicProblem, InterruptedException {
    var task =
        new FutureTask<T>(
            () -> {
              if (session == null) {
                session = MavenSession.open(place);
              }
              return work.on(session);
            });
    var worker = new Thread(task, "libraries");
    worker.setDaemon(true);
    worker.start();
    try {
      return task.get();
    } catch (ExecutionException thrown) {
      if (thrown.getCause() instanceof CellMagicProblem problem) {
        throw problem;
      }
      throw new CellMagicProblem(
          "the libraries could not be fetched: " + thrown.getCause(), thrown.getCause());
    } finally {
      if (worker.isAlive()) {
        worker.interrupt();
      }
    }
  }

  /** The version that stands already, from the kernel or from an earlier call. */
  private FoundLibrary.Standing standing(String group, String artifact) {
    var fetched = versions.get(group + ":" + artifact);
    if (fetched != null) {
      return FoundLibrary.Standing.fetched(fetched);
    }
    return own.version(group, artifact)
        .map(FoundLibrary.Standing::ofKernel)
        .orElse(FoundLibrary.Standing.NONE);
  }

  private List<Path> shelved(List<FoundLibrary> found) {
    var added = new ArrayList<FoundLibrary>();
    var left = new ArrayList<FoundLibrary>();
    for (var library : found) {
      var shadowed = library.file().isPresent() && own.holds(library.file().get());
      var checked = shadowed ? library.leftToKernel() : library;
      (checked.file().isPresent() ? added : left).add(checked);
    }
    say("Added to the class path:", added);
    say("Not added:", left.stream().filter(FoundLibrary::isWorthSaying).toList());
    if (added.isEmpty() && left.stream().noneMatch(FoundLibrary::isWorthSaying)) {
      System.out.println("Everything of it is on the class path already.");
    }
    var entries = new ArrayList<Path>();
    for (var library : added) {
      versions.put(library.group() + ":" + library.artifact(), library.version());
      entries.add(library.file().orElseThrow());
    }
    return entries;
  }

  private static void say(String heading, List<FoundLibrary> libraries) {
    if (!libraries.isEmpty()) {
      System.out.println(heading);
      libraries.forEach(library -> System.out.println("  " + library.words()));
    }
  }
}
