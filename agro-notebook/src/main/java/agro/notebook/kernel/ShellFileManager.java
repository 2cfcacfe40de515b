package agro.notebook.kernel;

import agro.notebook.kernel.ClassPathFiles.ClassInJar;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import javax.tools.FileObject;
import javax.tools.ForwardingJavaFileManager;
import javax.tools.JavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.StandardLocation;

/**
 * The files of the shell's compiler: the jars of this program from {@link ClassPathFiles},
 * everything else, such as libraries added later, as the compiler finds it by itself.
 */
final class ShellFileManager extends ForwardingJavaFileManager<StandardJavaFileManager>
    implements StandardJavaFileManager {

  private final ClassPathFiles ours;

  private ShellFileManager(StandardJavaFileManager standard, ClassPathFiles ours) {
    super(standard);
    this.ours = ours;
  }

  /**
   * Takes the jars of this program's class path over from a manager.
   *
   * @param standard the compiler's own manager
   * @return the manager to be used in its place
   */
  static StandardJavaFileManager over(StandardJavaFileManager standard) {
    var entries =
        Arrays.stream(System.getProperty("java.class.path", "").split(File.pathSeparator))
            .filter(entry -> !entry.isEmpty())
            .map(Path::of)
            .toList();
    var manager = new ShellFileManager(standard, ClassPathFiles.of(entries));
    try {
      standard.setLocationFromPaths(StandardLocation.CLASS_PATH, manager.others(entries));
    } catch (IOException e) {
      throw new UncheckedIOException("the class path of the cells cannot be set", e);
    }
    return manager;
  }

  private List<Path> others(List<Path> entries) {
    return entries.stream().filter(entry -> !ours.jars().contains(entry)).toList();
  }

  @Override
  public boolean handleOption(String option, Iterator<String> remaining) {
    if (!Set.of("-classpath", "-cp", "--class-path").contains(option) || !remaining.hasNext()) {
      return super.handleOption(option, remaining);
    }
    var entries = Arrays.stream(remaining.next().split(File.pathSeparator)).map(Path::of).toList();
    var value =
        others(entries).stream()
            .map(Path::toString)
            .collect(Collectors.joining(File.pathSeparator));
    return super.handleOption(option, List.of(value).iterator());
  }

  @Override
  public Iterable<JavaFileObject> list(
      Location location, String packageName, Set<JavaFileObject.Kind> kinds, boolean recurse)
      throws IOException {
    var found = super.list(location, packageName, kinds, recurse);
    if (location != StandardLocation.CLASS_PATH || !kinds.contains(JavaFileObject.Kind.CLASS)) {
      return found;
    }
    var all = new ArrayList<JavaFileObject>(ours.in(packageName, recurse));
    found.forEach(all::add);
    return all;
  }

  @Override
  public String inferBinaryName(Location location, JavaFileObject file) {
    return file instanceof ClassInJar ours
        ? ours.binaryName()
        : super.inferBinaryName(location, file);
  }

  @Override
  public JavaFileObject getJavaFileForInput(
      Location location, String className, JavaFileObject.Kind kind) throws IOException {
    if (location == StandardLocation.CLASS_PATH && kind == JavaFileObject.Kind.CLASS) {
      var file = ours.named(className);
      if (file.isPresent()) {
        return file.get();
      }
    }
    return super.getJavaFileForInput(location, className, kind);
  }

  @Override
  public boolean isSameFile(FileObject one, FileObject other) {
    return (one instanceof ClassInJar || other instanceof ClassInJar)
        ? one.equals(other)
        : fileManager.isSameFile(one, other);
  }

  @Override
  public boolean contains(Location location, FileObject file) throws IOException {
    return file instanceof ClassInJar
        ? location == StandardLocation.CLASS_PATH
        : super.contains(location, file);
  }

  @Override
  public Iterable<? extends JavaFileObject> getJavaFileObjectsFromFiles(
      Iterable<? extends File> files) {
    return fileManager.getJavaFileObjectsFromFiles(files);
  }

  @Override
  public Iterable<? extends JavaFileObject> getJavaFileObjects(File... files) {
    return fileManager.getJavaFileObjects(files);
  }

  @Override
  public Iterable<? extends JavaFileObject> getJavaFileObjects(Path... paths) {
    return fileManager.getJavaFileObjects(paths);
  }

  @Override
  public Iterable<? extends JavaFileObject> getJavaFileObjectsFromPaths(
      Collection<? extends Path> paths) {
    return fileManager.getJavaFileObjectsFromPaths(paths);
  }

  @Override
  public Iterable<? extends JavaFileObject> getJavaFileObjectsFromStrings(Iterable<String> names) {
    return fileManager.getJavaFileObjectsFromStrings(names);
  }

  @Override
  public Iterable<? extends JavaFileObject> getJavaFileObjects(String... names) {
    return fileManager.getJavaFileObjects(names);
  }

  @Override
  public void setLocation(Location location, Iterable<? extends File> files) throws IOException {
    fileManager.setLocation(location, files);
  }

  @Override
  public void setLocationFromPaths(Location location, Collection<? extends Path> paths)
      throws IOException {
    fileManager.setLocationFromPaths(location, paths);
  }

  @Override
  public void setLocationForModule(
      Location location, String moduleName, Collection<? extends Path> paths) throws IOException {
    fileManager.setLocationForModule(location, moduleName, paths);
  }

  @Override
  public Iterable<? extends File> getLocation(Location location) {
    return fileManager.getLocation(location);
  }

  @Override
  public Iterable<? extends Path> getLocationAsPaths(Location location) {
    return fileManager.getLocationAsPaths(location);
  }

  @Override
  public Path asPath(FileObject file) {
    return fileManager.asPath(file);
  }

  @Override
  public void setPathFactory(PathFactory factory) {
    fileManager.setPathFactory(factory);
  }
}
