package agro.notebook.kernel;

import agro.notebook.insight.CompilerMessage;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;

/**
 * What exceptions say about themselves. Every one of their methods may be the reader's own and may
 * throw, give null or lead in a circle; none of that gets out of here.
 */
final class ThrownText {

  private static final int MOST_CAUSES = 8;
  private static final int MOST_SUPPRESSED = 5;
  private static final int LONGEST = 4_000;
  private static final String CAUSE = "because of ";
  private static final String SUPPRESSED = "after that also ";

  private ThrownText() {}

  /**
   * The name of an exception's class as the reader would write it.
   *
   * @param thrown the exception
   * @return the name, for a class of a cell without what the shell wraps round it
   */
  static String name(Throwable thrown) {
    return CompilerMessage.asWritten(thrown.getClass().getName());
  }

  /**
   * What an exception says.
   *
   * @param thrown the exception
   * @return its message, cut when it is very long; an empty text when it has none
   */
  static String message(Throwable thrown) {
    try {
      var message = thrown.getLocalizedMessage();
      if (message == null) {
        return "";
      }
      var shown =
          message.length() <= LONGEST
              ? message
              : message.substring(0, LONGEST) + "... (" + message.length() + " letters)";
      return CompilerMessage.asWritten(shown);
    } catch (Throwable ownTrouble) {
      return "(its message could not be read: " + ownTrouble.getClass().getName() + ")";
    }
  }

  private static String named(Throwable thrown) {
    var message = message(thrown);
    return name(thrown) + (message.isEmpty() ? "" : ": " + message);
  }

  /**
   * Why an exception was thrown, and what went wrong after it.
   *
   * @param thrown the exception
   * @return one line for each cause and each suppressed exception, each exception once
   */
  static List<String> causes(Throwable thrown) {
    Set<Throwable> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    seen.add(thrown);
    var lines = new ArrayList<String>();
    addSuppressed(thrown, seen, lines);
    var cause = cause(thrown);
    for (var depth = 0; cause != null && seen.add(cause); depth++) {
      if (depth == MOST_CAUSES) {
        lines.add(CAUSE + "further exceptions");
        break;
      }
      lines.add(CAUSE + named(cause));
      addSuppressed(cause, seen, lines);
      cause = cause(cause);
    }
    return lines;
  }

  private static Throwable cause(Throwable thrown) {
    try {
      return thrown.getCause();
    } catch (Throwable ownTrouble) {
      return null;
    }
  }

  private static void addSuppressed(Throwable thrown, Set<Throwable> seen, List<String> lines) {
    var all = thrown.getSuppressed();
    for (var index = 0; index < Math.min(all.length, MOST_SUPPRESSED); index++) {
      if (seen.add(all[index])) {
        lines.add(SUPPRESSED + named(all[index]));
      }
    }
    if (all.length > MOST_SUPPRESSED) {
      lines.add(SUPPRESSED + (all.length - MOST_SUPPRESSED) + " more");
    }
  }
}
