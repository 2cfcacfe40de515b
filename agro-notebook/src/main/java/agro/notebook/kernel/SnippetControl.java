package agro.notebook.kernel;

import java.lang.instrument.ClassDefinition;
import java.lang.instrument.UnmodifiableClassException;
import java.lang.reflect.Field;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.Arrays;
import jdk.jshell.execution.DirectExecutionControl;
import jdk.jshell.spi.SPIResolutionException;

/**
 * Runs snippets in this process. Beyond what the JDK's engine does it redefines classes in place,
 * keeps results and exceptions as live objects, and finds the field behind a variable.
 */
final class SnippetControl extends DirectExecutionControl {

  private final SnippetLoader loader;
  private final CellThread thread;
  private Object result;
  private Throwable thrown;
  private Field field;

  SnippetControl(SnippetLoader loader, CellThread thread) {
    super(loader);
    this.loader = loader;
    this.thread = thread;
  }

  @Override
  public void redefine(ClassBytecodes[] compiled)
      throws ClassInstallException, NotImplementedException, EngineTerminationException {
    var instrumentation =
        RedefinitionAgent.instrumentation()
            .orElseThrow(() -> new NotImplementedException("started without the agent"));
    var classes =
        Arrays.stream(compiled)
            .map(one -> new ClassBytecodes(one.name(), ExitCalls.refused(one.bytecodes())))
            .toArray(ClassBytecodes[]::new);
    var nothingInstalled = new boolean[classes.length];
    if (Arrays.stream(classes).anyMatch(this::wouldKeepStaleStatics)) {
      throw new ClassInstallException("a static initialiser changed", nothingInstalled);
    }
    try {
      var definitions = new ClassDefinition[classes.length];
      for (var index = 0; index < classes.length; index++) {
        definitions[index] =
            new ClassDefinition(
                loader.findClass(classes[index].name()), classes[index].bytecodes());
      }
      instrumentation.redefineClasses(definitions);
    } catch (ClassNotFoundException
        | UnmodifiableClassException
        | UnsupportedOperationException
        | LinkageError shapeChanged) {
      throw new ClassInstallException("the shape changed: " + shapeChanged, nothingInstalled);
    }
    classesRedefined(classes);
  }

  private boolean wouldKeepStaleStatics(ClassBytecodes changed) {
    var before = loader.bytecodeOf(changed.name());
    return before != null
        && !StaticInitialiser.of(before).equals(StaticInitialiser.of(changed.bytecodes()));
  }

  @Override
  protected String invoke(Method snippet) throws Exception {
    result = null;
    try {
      result = thread.call(() -> snippet.invoke(null));
    } catch (InvocationTargetException fromSnippet) {
      throw fromSnippet;
    } catch (Throwable fromEngine) {
      throw new InvocationTargetException(fromEngine);
    }
    return "";
  }

  @Override
  protected String throwConvertedInvocationException(Throwable cause)
      throws RunException, InternalException {
    if (cause instanceof SPIResolutionException unresolved) {
      throw new ResolutionException(unresolved.id(), unresolved.getStackTrace());
    }
    thrown = cause;
    throw new UserException("", cause.getClass().getName(), cause.getStackTrace());
  }

  @Override
  protected String throwConvertedOtherException(Throwable cause)
      throws RunException, InternalException {
    return throwConvertedInvocationException(cause);
  }

  @Override
  public String varValue(String className, String name) throws InternalException {
    try {
      field = loader.findClass(className).getDeclaredField(name);
      field.setAccessible(true);
      return "";
    } catch (ReflectiveOperationException | LinkageError gone) {
      throw new InternalException("no such variable: " + gone);
    }
  }

  /**
   * What the last snippet returned; asked once.
   *
   * @return the live object, possibly null
   */
  Object takeResult() {
    var taken = result;
    result = null;
    return taken;
  }

  /**
   * What the last snippet threw; asked once.
   *
   * @return the live exception, or null
   */
  Throwable takeThrown() {
    var taken = thrown;
    thrown = null;
    return taken;
  }

  /**
   * The field that was found last by {@link #varValue}; asked once.
   *
   * @return the field, or null
   */
  Field takeField() {
    var taken = field;
    field = null;
    return taken;
  }
}
