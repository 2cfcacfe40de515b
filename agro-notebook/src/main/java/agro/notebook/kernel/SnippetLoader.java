package agro.notebook.kernel;

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

  SnippetLoader(ClassLoader parent) {
    super("snippets", new URL[0], parent);
  }

  @Override
  public void load(ClassBytecodes[] classes) throws ClassInstallException {
    for (var one : classes) {
      bytecode.put(one.name(), ExitCalls.refused(one.bytecodes()));
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
