package agro.notebook.display;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Iterator;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Spliterator;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Future;
import java.util.concurrent.FutureTask;
import java.util.stream.BaseStream;

/** Words for values of the JDK whose toString would tell a reader little. */
final class SpecialWords {

  private static final int FRAMES = 12;
  private static final int CAUSES = 8;

  private SpecialWords() {}

  /**
   * Words for a value.
   *
   * @param value any value but null
   * @return the words, or empty when toString says it better
   */
  static Optional<String> of(Object value) {
    if (value instanceof CharSequence || value instanceof Number || value instanceof Enum<?>) {
      return Optional.empty();
    }
    if (value instanceof Throwable thrown) {
      return Optional.of(throwable(thrown));
    }
    if (value instanceof BaseStream<?, ?> stream) {
      return Optional.of(stream(stream));
    }
    if (value instanceof CompletableFuture<?> || value instanceof FutureTask<?>) {
      return Optional.of(future((Future<?>) value));
    }
    if (value instanceof Thread thread) {
      return Optional.of(thread(thread));
    }
    if (value instanceof Class<?> type) {
      return Optional.of(type(type));
    }
    return primitiveOptional(value).or(() -> withoutOwnText(value));
  }

  private static Optional<String> primitiveOptional(Object value) {
    var nothing = "(nothing)";
    if (value instanceof OptionalDouble number) {
      return Optional.of(number.isPresent() ? String.valueOf(number.getAsDouble()) : nothing);
    }
    if (value instanceof OptionalInt number) {
      return Optional.of(number.isPresent() ? String.valueOf(number.getAsInt()) : nothing);
    }
    if (value instanceof OptionalLong number) {
      return Optional.of(number.isPresent() ? String.valueOf(number.getAsLong()) : nothing);
    }
    return Optional.empty();
  }

  private static String stream(BaseStream<?, ?> stream) {
    var primitive = !(stream instanceof java.util.stream.Stream<?>);
    return "A stream, left unread because it can be read only once; add "
        + (primitive ? ".toArray()" : ".toList()")
        + " to see its values";
  }

  /** Never waits: only a future that is done is asked for its value. */
  private static String future(Future<?> future) {
    var name = future.getClass().getSimpleName();
    if (!future.isDone()) {
      return name + ", not done yet";
    }
    if (future.isCancelled()) {
      return name + ", cancelled";
    }
    try {
      return name + ", done: " + PlainText.brief(future.get(), 1_000);
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      return name + ", done";
    } catch (CancellationException cancelled) {
      return name + ", cancelled";
    } catch (Exception failed) {
      var cause =
          failed.getCause() instanceof CompletionException inner && inner.getCause() != null
              ? inner.getCause()
              : failed.getCause();
      return name + ", failed: " + PlainText.inWords(cause == null ? failed : cause);
    }
  }

  private static String thread(Thread thread) {
    return "Thread \""
        + thread.getName()
        + "\", "
        + thread.getState()
        + (thread.isDaemon() ? ", daemon" : "")
        + (thread.isInterrupted() ? ", interrupted" : "");
  }

  private static String type(Class<?> type) {
    var kind =
        type.isAnnotation()
            ? "@interface "
            : type.isInterface()
                ? "interface "
                : type.isEnum() ? "enum " : type.isRecord() ? "record " : "class ";
    return type.getName().contains("$JShell$") && !type.isArray()
        ? kind + PlainText.typeName(type, type.getName())
        : type.toString();
  }

  /** Class and message of it and its causes, and where it was made. */
  private static String throwable(Throwable thrown) {
    var lines = new ArrayList<String>();
    var seen = Collections.newSetFromMap(new IdentityHashMap<Throwable, Boolean>());
    var at = thrown;
    for (var count = 0; at != null && count < CAUSES && seen.add(at); count++) {
      lines.add((count == 0 ? "" : "caused by ") + PlainText.inWords(at));
      at = at.getCause();
    }
    var frames = thrown.getStackTrace();
    for (var index = 0; index < Math.min(FRAMES, frames.length); index++) {
      lines.add("    at " + frames[index]);
    }
    if (frames.length > FRAMES) {
      lines.add("    ... " + (frames.length - FRAMES) + " more");
    }
    return String.join("\n", lines);
  }

  private static Optional<String> withoutOwnText(Object value) {
    if (!hasNoOwnText(value.getClass())) {
      return Optional.empty();
    }
    if (value instanceof Iterator<?> || value instanceof Spliterator<?>) {
      return Optional.of(
          "An iterator, left unread because it can be read only once; a for loop sees its values");
    }
    var type = value.getClass();
    if (type.isHidden() && type.getName().contains("$$Lambda") && type.getInterfaces().length > 0) {
      var shape = type.getInterfaces()[0];
      return Optional.of("A lambda of type " + PlainText.typeName(shape, shape.getSimpleName()));
    }
    return type.getName().contains("$JShell$")
        ? Optional.of(
            PlainText.typeName(type, type.getName())
                + "@"
                + Integer.toHexString(System.identityHashCode(value)))
        : Optional.empty();
  }

  private static boolean hasNoOwnText(Class<?> type) {
    try {
      return type.getMethod("toString").getDeclaringClass() == Object.class
          && type.getMethod("hashCode").getDeclaringClass() == Object.class;
    } catch (ReflectiveOperationException | RuntimeException | LinkageError unreadable) {
      return false;
    }
  }
}
