package agro.notebook.kernel;

import agro.notebook.bytecode.CellBytecode;
import java.io.File;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import jdk.jshell.execution.LoaderDelegate;
import jdk.jshell.spi.ExecutionControl.ClassBytecodes;
import jdk.jshell.spi.ExecutionControl.ClassInstallException;
import jdk.jshell.spi.ExecutionControl.InternalException;

/** Loads the classes of snippets; classes that need each other may come in one call. */
final class SnippetLoader extends URLClassLoader implements LoaderDelegate {

  private final Map<String, byte[]> bytecode = new ConcurrentHashMap<>();
  private final Map<String, Long> cells = new ConcurrentHashMap<>();
  private volatile RunningCell running;

  SnippetLoader(ClassLoader parent) {
    super("snippets", new URL[0], parent);
  }

  @Override
  public void load(ClassBytecodes[] classes) throws ClassInstallException {
    for (var one : classes) {
      bytecode.put(one.name(), CellBytecode.prepared(one.bytecodes()));
      cells.put(one.name(), running == null ? 0 : running.number());
    }
    var installed = new boolean[classes.length];
    for (var index = 0; index < classes.length; index++) {
      try {
        loadClass(classes[index].name());
        installed[index] = true;
      } catch (ClassNotFoundException | LinkageError trouble) {
        throw new ClassInstallException("cannot load the class: " + trouble, installed);
      }
    }
  }

  @Override
  public void classesRedefined(ClassBytecodes[] classes) {
    for (var one : classes) {
      bytecode.put(one.name(), one.bytecodes());
    }
  }

  /**
   * Takes the classes that are loaded from now on for those of a cell.
   *
   * @param cell the cell
   */
  void serve(RunningCell cell) {
    running = cell;
  }

  /**
   * The cell that runs now or ran last.
   *
   * @return the cell, or null before the first one
   */
  RunningCell running() {
    return running;
  }

  /**
   * The number of the cell that declared a class.
   *
   * @param type a class of this loader, or one that the JDK made for its lambdas
   * @return the number; 0 when no cell declared it
   */
  long cellOf(Class<?> type) {
    var name = type.getName();
    var lambda = name.indexOf("$$Lambda");
    return cells.getOrDefault(lambda < 0 ? name : name.substring(0, lambda), 0L);
  }

  /**
   * The bytecode in force of a class of a snippet.
   *
   * @param name binary name
   * @return the bytecode, or null when no snippet made such a class
   */
  byte[] bytecodeOf(String name) {
    return bytecode.get(name);
  }

  /**
   * Finds a class both for the engine, which asks for classes that are there already, and for the
   * loading of one that is not.
   */
  @Override
  public Class<?> findClass(String name) throws ClassNotFoundException {
    synchronized (getClassLoadingLock(name)) {
      var loaded = findLoadedClass(name);
      if (loaded != null) {
        return loaded;
      }
      var bytes = bytecode.get(name);
      return bytes == null ? super.findClass(name) : defineClass(name, bytes, 0, bytes.length);
    }
  }

  @Override
  public void addToClasspath(String path) throws InternalException {
    for (var entry : path.split(File.pathSeparator, -1)) {
      try {
        addURL(new File(entry).toURI().toURL());
      } catch (MalformedURLException bad) {
        throw new InternalException("not a class path entry: " + entry);
      }
    }
  }
}
