package agro.notebook.kernel;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.jar.JarFile;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;

/**
 * The classes in the jars of this program, by package, for the compiler of the shell. The compiler
 * would open each jar as a file system and walk through all of it before the first cell; the list
 * of names that the running program has of its jars is there already.
 */
final class ClassPathFiles {

  private static final String SUFFIX = ".class";

  private final List<Path> jars = new ArrayList<>();
  private final Map<String, List<Named>> byPackage = new HashMap<>();

  /** A class file, of which there are tens of thousands: as little as possible. */
  private record Named(JarFile jar, String entry) {}

  private ClassPathFiles() {}

  /**
   * The classes in the jars of a class path.
   *
   * @param entries the entries of the class path; folders and jars that cannot be read are left out
   * @return the classes
   */
  static ClassPathFiles of(List<Path> entries) {
    var files = new ClassPathFiles();
    for (var entry : entries) {
      if (Files.isRegularFile(entry)) {
        files.add(entry);
      }
    }
    return files;
  }

  private void add(Path path) {
    try {
      var jar = new JarFile(path.toFile());
      // A jar that leads to others is left to the compiler, which follows it.
      var manifest = jar.getManifest();
      if (manifest != null && manifest.getMainAttributes().getValue("Class-Path") != null) {
        jar.close();
        return;
      }
      for (var entries = jar.entries(); entries.hasMoreElements(); ) {
        add(jar, entries.nextElement().getName());
      }
      jars.add(path);
    } catch (IOException left) {
      // The compiler will say what is wrong with it.
    }
  }

  private void add(JarFile jar, String name) {
    if (name.endsWith(SUFFIX) && !name.startsWith("META-INF/")) {
      var slash = name.lastIndexOf('/');
      var inPackage = slash < 0 ? "" : name.substring(0, slash);
      byPackage.computeIfAbsent(inPackage, unseen -> new ArrayList<>()).add(new Named(jar, name));
    }
  }

  /** The jars whose classes these are. */
  List<Path> jars() {
    return jars;
  }

  /**
   * The classes of a package.
   *
   * @param name its name
   * @param below whether those of the packages below are wanted too
   * @return the classes, possibly none
   */
  List<ClassInJar> in(String name, boolean below) {
    var folder = name.replace('.', '/');
    var classes = new ArrayList<ClassInJar>();
    if (!below) {
      byPackage.getOrDefault(folder, List.of()).forEach(one -> classes.add(new ClassInJar(one)));
      return classes;
    }
    byPackage.forEach(
        (each, inIt) -> {
          if (folder.isEmpty() || each.equals(folder) || each.startsWith(folder + "/")) {
            inIt.forEach(one -> classes.add(new ClassInJar(one)));
          }
        });
    return classes;
  }

  /**
   * A class by its name.
   *
   * @param binaryName for example {@code java.util.Map$Entry}
   * @return the class, if a jar has it
   */
  Optional<ClassInJar> named(String binaryName) {
    var entry = binaryName.replace('.', '/') + SUFFIX;
    var slash = entry.lastIndexOf('/');
    return byPackage.getOrDefault(slash < 0 ? "" : entry.substring(0, slash), List.of()).stream()
        .filter(one -> one.entry().equals(entry))
        .findFirst()
        .map(ClassInJar::new);
  }

  /** One class in a jar. */
  static final class ClassInJar extends SimpleJavaFileObject {
    private final Named file;

    private ClassInJar(Named file) {
      super(URI.create("class:///" + file.entry().replace(" ", "%20")), Kind.CLASS);
      this.file = file;
    }

    String binaryName() {
      var name = file.entry();
      return name.substring(0, name.length() - SUFFIX.length()).replace('/', '.');
    }

    @Override
    public InputStream openInputStream() throws IOException {
      return file.jar().getInputStream(file.jar().getEntry(file.entry()));
    }

    @Override
    public boolean isNameCompatible(String simpleName, JavaFileObject.Kind kind) {
      return kind == Kind.CLASS && binaryName().endsWith(simpleName);
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof ClassInJar one && file.equals(one.file);
    }

    @Override
    public int hashCode() {
      return file.hashCode();
    }
  }
}
