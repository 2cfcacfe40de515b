package agro.notebook.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A cell that is interrupted ends, whatever it does, and the next one works. */
class InterruptTest {

  private static final String LIBRARY = "agro.notebook.kernel.StubbornLibrary";

  private final CellTrial trial = new CellTrial();

  @AfterEach
  void close() {
    StubbornLibrary.release();
    trial.close();
  }

  private static void assertInterrupted(CellResult result) {
    assertThat(result.failure().orElseThrow().kind()).isEqualTo(CellFailure.Kind.INTERRUPTED);
    assertThat(result.value().present()).isFalse();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "while (true);",
        "int n = 0; while (true) try { while (true) n++; } catch (Throwable t) { }",
        "void f() { try { while (true); } catch (Throwable t) { f(); } }\nf();",
        "long fib(int n) { return n < 2 ? 1 : fib(n - 1) + fib(n - 2); }\nfib(200)",
        "do { } while (true);",
        "for (int i = 0; i < 10; i++) { i--; }",
        "int[] a = {1}; for (int i = 0; i < 1; i += 0) { a[0]++; }",
        "int k = 0; while (true) { switch (k) { case 0: k = 1; continue; default: k = 0; } }",
        "Runnable r = () -> { while (true) { } };\nr.run();",
        "class In { class Deep { void go() { for (;;) { } } } }\nnew In().new Deep().go();",
        "IntStream.range(0, 64).parallel().forEach(i -> { while (true) { } });",
        "IntStream.iterate(0, i -> i + 1).forEach(i -> { });",
        "while (true) try { Thread.sleep(60_000); } catch (InterruptedException e) { }",
        "new CountDownLatch(1).await();",
        "var pool = Executors.newFixedThreadPool(1); pool.submit(() -> { while (true) { } }).get()",
        "new Object() { public String toString() { while (true) { } } }",
        "class Bad extends RuntimeException { public String getMessage() { while (true) { } } }\n"
            + "throw new Bad();"
      })
  void theNextCellRuns(String code) throws Exception {
    assertInterrupted(trial.interrupted("System.out.print(\"on\");\n" + code));
    var next = trial.run("20 + 1");
    assertThat(next.value().object()).isEqualTo(21);
    assertThat(next.remarks()).isEmpty();
  }

  @Test
  void aRedefinedMethodIsStoppedToo() throws Exception {
    trial.run("void go() { }\nvar before = 1;");
    trial.run("void go() { System.out.print(\"on\"); while (true) { } }");
    assertInterrupted(trial.interrupted("go();"));
    assertThat(trial.shown("before")).isEqualTo("1");
  }

  @Test
  void aLibraryThatDoesNotEndIsLeftBehind() throws Exception {
    assertInterrupted(trial.interrupted(LIBRARY + ".work();\nSystem.out.println(\"late\");"));
    var next = trial.run("21");
    assertThat(next.value().object()).isEqualTo(21);
    assertThat(next.remarks()).singleElement().asString().contains("cell 1").contains("new thread");
    assertThat(trial.run("22").remarks()).isEmpty();
  }

  @Test
  void whatALeftBehindCellPrintsIsMarked() throws Exception {
    trial.interrupted(
        "class Late { void work() throws Exception {\n"
            + "  synchronized (Late.class) {\n"
            + LIBRARY
            + ".work(); System.out.println(\"late\"); System.out.println(\"later\"); } } }\n"
            + "new Late().work();");
    var running = trial.start("System.out.println(\"mine\"); Thread.sleep(60_000);");
    trial.awaitOutput("mine");
    StubbornLibrary.release();
    trial.awaitOutput("later");
    assertThat(trial.printed())
        .contains("[From cell 1, which was interrupted and has not ended:]\nlate\nlater\n")
        .containsOnlyOnce("[From cell 1");
    trial.interrupted(running);
  }

  @Test
  void nothingIsSaidOfACellThatEndedMeanwhile() throws Exception {
    trial.interrupted(LIBRARY + ".work();");
    var left =
        Thread.getAllStackTraces().entrySet().stream()
            .filter(
                each ->
                    java.util.Arrays.stream(each.getValue())
                        .anyMatch(call -> call.getClassName().equals(LIBRARY)))
            .findFirst()
            .orElseThrow()
            .getKey();
    StubbornLibrary.release();
    left.join(60_000);
    assertThat(trial.run("1").remarks()).isEmpty();
  }

  @Test
  void aValueThatCannotBeShownIsLeftBehind() throws Exception {
    assertInterrupted(trial.interrupted(LIBRARY + ".unshowable()"));
    assertThat(trial.shown("3")).isEqualTo("3");
  }

  @Test
  void aLockThatIsNeverReleasedIsLeftBehind() throws Exception {
    assertInterrupted(
        trial.interrupted(
            "Object lock = new Object();\nvar holder = new Thread(() -> { synchronized (lock) { "
                + LIBRARY
                + ".work(); } });\n{ holder.start(); while (holder.isAlive()) synchronized (lock) {"
                + " Thread.yield(); } }"));
    assertThat(trial.shown("4")).isEqualTo("4");
  }

  @Test
  void threadsOfEarlierCellsAndOtherEvaluatorsGoOn() throws Exception {
    trial.run(
        "import java.util.concurrent.atomic.*;\nvar own = new AtomicLong(); var pooled = new"
            + " AtomicLong();\nvar t = new Thread(() -> { while (true) own.incrementAndGet(); });\n"
            + "t.setDaemon(true);\nt.start();\nvar pool = Executors.newSingleThreadExecutor(task ->"
            + " { var worker = new Thread(task); worker.setDaemon(true); return worker; });\n"
            + "pool.submit(() -> { while (true) pooled.incrementAndGet(); });");
    try (var other = new CellTrial()) {
      var others = other.start("System.out.print(\"on\"); while (true) { }");
      other.awaitOutput();
      assertInterrupted(trial.interrupted("System.out.print(\"on\"); while (true) { }"));
      assertThat(
              trial.shown(
                  """
                  long a = own.get(), b = pooled.get();
                  while (own.get() == a || pooled.get() == b) Thread.sleep(1);
                  t.isAlive()"""))
          .isEqualTo("true");
      assertThat(others).isNotDone();
      assertInterrupted(other.interrupted(others));
    }
  }

  @Test
  void aThreadOfTheInterruptedCellIsStopped() throws Exception {
    trial.interrupted(
        "var t = new Thread(() -> { while (true) try { while (true) { } } catch (Throwable e) { }"
            + " });\nt.start();\nSystem.out.print(\"on\");\nt.join();");
    assertThat(trial.shown("t.join(30_000); t.isAlive()")).isEqualTo("false");
  }

  @Test
  void anInterruptBetweenCellsDoesNothing() {
    trial.run("int n = 1;");
    trial.evaluator().interrupt();
    assertThat(trial.shown("n + 1")).isEqualTo("2");
  }

  @Test
  void statementsAfterTheInterruptedOneDoNotRun() throws Exception {
    trial.run("int n = 1;");
    assertInterrupted(
        trial.interrupted(
            "System.out.print(\"on\");\ntry { Thread.sleep(60_000); } catch (InterruptedException"
                + " e) { }\nn = 2;"));
    assertThat(trial.shown("n")).isEqualTo("1");
  }
}
