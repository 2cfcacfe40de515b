package agro.notebook.kernel;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** Started in a process with little memory: cells that would fill it. Prints what held. */
final class SmallMemoryProgram {

  private SmallMemoryProgram() {}

  /** An expression that holds ten megabytes, and is sometimes long to show. */
  private static String unnamed(int cell) {
    return cell % 20 == 0 ? "new byte[10_000_000]" : "List.of(new byte[10_000_000]).iterator()";
  }

  public static void main(String[] arguments) {
    var out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    try (var trial = new CellTrial()) {
      var failed = 0;
      for (var cell = 0; cell < 200; cell++) {
        failed += trial.run(unnamed(cell)).succeeded() ? 0 : 1;
      }
      out.println("unnamed results that failed: " + failed);

      var full =
          trial.run(
              "var hoard = new ArrayList<byte[]>();\nwhile (true) hoard.add(new byte[1 << 18]);");
      full.failure().ifPresent(failure -> out.println("failure: " + failure.name()));
      full.remarks().forEach(remark -> out.println("remark: " + remark));
      out.println("kept: " + (Integer.parseInt(trial.shown("hoard.size()")) > 50));
      out.println("freed: " + trial.shown("hoard = null"));
      out.println("next: " + trial.shown("new byte[10_000_000].length"));

      var nodes =
          trial.run("var nodes = new LinkedList<Object>();\nwhile (true) nodes.add(new Object());");
      out.println("small pieces: " + nodes.succeeded());
      trial.run("nodes = null;");
      out.println("at last: " + trial.shown("6 * 7"));
    }
    System.exit(0);
  }
}
