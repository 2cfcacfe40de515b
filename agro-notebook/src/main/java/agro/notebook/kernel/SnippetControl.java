package agro.notebook.kernel;

import agro.notebook.bytecode.CellBytecode;
import agro.notebook.bytecode.StaticInitialiser;
import java.lang.instrument.ClassDefinition;
import java.lang.instrument.UnmodifiableClassException;
import java.lang.reflect.Field;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import jdk.jshell.execution.DirectExecutionControl;
import jdk.jshell.spi.SPIResolutionException;

/**
 * Runs snippets in this process. Beyond what the JDK's engine does it redefines classes in place,
 * keeps results and exceptions as live objects, and finds the field behind a variable.
 */
final class SnippetControl extends DirectExecutionControl {

  /** How the code of a snippet ended; its exception and where that came from, or its value. */
  private record Outcome(Object value, Throwable thrown, List<StackTraceElement> calls) {}

  private static final Outcome NOTHING = new Outcome(null, null, List.of());

  private final SnippetLoader loader;
  private final CellThread thread;
  private final MemoryReserve reserve;
  private Outcome outcome = NOTHING;
  private Field field;

  SnippetControl(SnippetLoader loader, CellThread thread, MemoryReserve reserve) {
    super(loader);
    this.loader = loader;
    this.thread = thread;
    this.reserve = reserve;
  }

  @Override
  public void redefine(ClassBytecodes[] compiled)
      throws ClassInstallException, NotImplementedException, EngineTerminationException {
    var instrumentation =
        RedefinitionAgent.instrumentation()
            .orElseThrow(() -> new NotImplementedException("started without the agent"));
    var classes =
        Arrays.stream(compiled)
            .map(one -> new ClassBytecodes(one.name(), CellBytecode.prepared(one.bytecodes())))
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
    outcome = NOTHING;
    var cell = loader.running();
    try {
      outcome = cell == null ? ended(snippet) : thread.call(cell, () -> ended(snippet));
    } catch (Throwable fromEngine) {
      outcome = new Outcome(null, fromEngine, List.of());
    }
    if (outcome.thrown() != null) {
      throw new InvocationTargetException(outcome.thrown());
    }
    return "";
  }

  /** Runs the snippet on this thread, where its exception may be asked for its story as well. */
  private Outcome ended(Method snippet) throws IllegalAccessException {
    try {
      return new Outcome(snippet.invoke(null), null, List.of());
    } catch (InvocationTargetException fromSnippet) {
      var thrown = fromSnippet.getCause();
      if (thrown instanceof OutOfMemoryError) {
        reserve.release();
      }
      return new Outcome(null, thrown, calls(thrown));
    }
  }

  private static List<StackTraceElement> calls(Throwable thrown) {
    try {
      return Stream.of(thrown.getStackTrace()).filter(Objects::nonNull).toList();
    } catch (Throwable ownTrouble) {
      return List.of();
    }
  }

  @Override
  protected String throwConvertedInvocationException(Throwable cause)
      throws RunException, InternalException {
    if (cause instanceof SPIResolutionException unresolved) {
      throw new ResolutionException(unresolved.id(), unresolved.getStackTrace());
    }
    throw new UserException(
        "", cause.getClass().getName(), outcome.calls().toArray(StackTraceElement[]::new));
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
    var taken = outcome.value();
    outcome = NOTHING;
    return taken;
  }

  /**
   * What the last snippet threw; asked once.
   *
   * @return the live exception, or null
   */
  Throwable takeThrown() {
    var taken = outcome.thrown();
    outcome = NOTHING;
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
