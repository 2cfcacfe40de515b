package agro.notebook.insight;

import java.io.File;
import java.io.IOException;
import java.lang.module.ModuleDescriptor.Exports;
import java.lang.module.ModuleFinder;
import java.lang.module.ModuleReference;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipFile;

/** The names of all packages and types that could be imported. */
final class TypeIndex {

  /** Where a reader most likely means a name to come from, likeliest first. */
  private static final List<String> USUAL =
      List.of("agro.", "java.util.", "java.time.", "java.io.", "java.nio.", "java.math.", "java.");

  private final NavigableMap<String, NavigableSet<String>> bySimpleName = new TreeMap<>();
  private final NavigableSet<String> packages = new TreeSet<>();

  private TypeIndex() {}

  /**
   * Reads the names from the JDK and from class path entries.
   *
   * @param classPath jars and folders; those that cannot be read are left out
   * @return the index
   */
  static TypeIndex of(List<Path> classPath) {
    var index = new TypeIndex();
    for (var module : ModuleFinder.ofSystem().findAll()) {
      index.addModule(module);
    }
    for (var entry : classPath) {
      index.addEntry(entry);
    }
    return index;
  }

  /** The entries of this program's own class path. */
  static List<Path> ownClassPath() {
    return Stream.of(System.getProperty("java.class.path", "").split(File.pathSeparator, -1))
        .filter(entry -> !entry.isEmpty())
        .map(Path::of)
        .toList();
  }

  private void addModule(ModuleReference module) {
    Set<String> open =
        module.descriptor().exports().stream()
            .filter(exports -> !exports.isQualified())
            .map(Exports::source)
            .collect(Collectors.toSet());
    if (open.isEmpty()) {
      return;
    }
    try (var reader = module.open()) {
      reader.list().forEach(file -> addFile(file, open));
    } catch (IOException unreadable) {
      packages.addAll(open);
    }
  }

  private void addEntry(Path entry) {
    try {
      if (Files.isDirectory(entry)) {
        try (var files = Files.walk(entry)) {
          files.forEach(
              file -> addFile(entry.relativize(file).toString().replace('\\', '/'), null));
        }
      } else if (Files.isRegularFile(entry)) {
        try (var jar = new ZipFile(entry.toFile())) {
          jar.stream().forEach(file -> addFile(file.getName(), null));
        }
      }
    } catch (IOException unreadable) {
      return;
    }
  }

  private void addFile(String file, Set<String> open) {
    var slash = file.lastIndexOf('/');
    var isType = file.endsWith(".class") && file.indexOf('$') < 0 && file.indexOf('-') < 0;
    if (!isType || slash < 0) {
      return;
    }
    var inPackage = file.substring(0, slash).replace('/', '.');
    if (open == null || open.contains(inPackage)) {
      var simple = file.substring(slash + 1, file.length() - ".class".length());
      packages.add(inPackage);
      bySimpleName.computeIfAbsent(simple, name -> new TreeSet<>()).add(inPackage + "." + simple);
    }
  }

  /**
   * The types of a simple name. Where one of them is usual, those that only happen to be on the
   * class path, because some library needs them, are left out.
   *
   * @param simpleName for example {@code List}
   * @return full names, the likeliest first
   */
  List<String> typesNamed(String simpleName) {
    var all =
        bySimpleName.getOrDefault(simpleName, new TreeSet<>()).stream()
            .sorted(usualFirst())
            .toList();
    return all.isEmpty() || !isUsual(all.get(0))
        ? all
        : all.stream().filter(TypeIndex::isUsual).toList();
  }

  private static boolean isUsual(String name) {
    return rank(name) <= USUAL.size();
  }

  /**
   * The types whose simple names begin so.
   *
   * @param prefix the beginning of a simple name
   * @return full names, the likeliest first
   */
  List<String> typesBeginning(String prefix) {
    return bySimpleName.subMap(prefix, true, prefix + Character.MAX_VALUE, false).values().stream()
        .flatMap(Set::stream)
        .sorted(usualFirst())
        .toList();
  }

  /**
   * All simple names of types.
   *
   * @return the names, sorted
   */
  Set<String> simpleNames() {
    return bySimpleName.keySet();
  }

  /**
   * The packages directly below a package, whether they hold types or only further packages.
   *
   * @param parent a package, or an empty text for the outermost ones
   * @return their last names, sorted
   */
  NavigableSet<String> packagesBelow(String parent) {
    var start = parent.isEmpty() ? "" : parent + ".";
    var below = new TreeSet<String>();
    for (var name : packages.tailSet(start)) {
      if (!name.startsWith(start)) {
        break;
      }
      below.add(name.substring(start.length()).split("\\.", 2)[0]);
    }
    return below;
  }

  /**
   * All packages that hold types.
   *
   * @return full names, sorted
   */
  NavigableSet<String> packages() {
    return packages;
  }

  private static Comparator<String> usualFirst() {
    return Comparator.<String>comparingInt(TypeIndex::rank)
        .thenComparing(Comparator.naturalOrder());
  }

  private static int rank(String name) {
    for (var index = 0; index < USUAL.size(); index++) {
      if (name.startsWith(USUAL.get(index))) {
        return name.startsWith("java.awt.") ? USUAL.size() : index;
      }
    }
    return USUAL.size() + 1;
  }
}
