package agro.notebook.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.TimeZone;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What a cell may do to its evaluator, and that the next cell works all the same. */
class UnbreakableTest {

  private final CellTrial trial = new CellTrial();
  private final Locale place = Locale.getDefault();
  private final TimeZone zone = TimeZone.getDefault();

  @AfterEach
  void close() {
    trial.close();
    Locale.setDefault(place);
    TimeZone.setDefault(zone);
  }

  @Test
  void aThreadThatGoesOnPrintsToTheLastCell() throws InterruptedException {
    trial.run(
        "var go = new CountDownLatch(1);\n"
            + "var t = new Thread(() -> { try { go.await(); } catch (InterruptedException e) { }"
            + " System.out.print(\"late\"); });\nt.start();");
    trial.run("go.countDown();\nt.join();");
    assertThat(trial.printed()).isEqualTo("late");
  }

  @Test
  void aWorkerOfThePoolOfAnotherEvaluatorPrintsToItsOwnCell() {
    trial.run("IntStream.range(0, 100).parallel().sum();");
    try (var other = new CellTrial()) {
      other.run("IntStream.range(0, 100).parallel().forEach(n -> System.out.print(\"x\"));");
      assertThat(other.printed()).isEqualTo("x".repeat(100));
      assertThat(trial.printed()).isEmpty();
    }
  }

  @Test
  void defaultsThatACellSetsStay() {
    trial.run(
        "Locale.setDefault(Locale.GERMANY); TimeZone.setDefault(TimeZone.getTimeZone(\"UTC\"));");
    assertThat(trial.shown("String.format(\"%.1f\", 1.5) + ZoneId.systemDefault()"))
        .isEqualTo("1,5UTC");
  }

  @Test
  void streamsAreThereAgainForTheNextCell() {
    trial.run("System.setOut(null); System.setErr(null); System.setIn(null);");
    assertThat(
            trial.run("System.out.print(1); System.err.print(2); System.in.available();").failure())
        .isEmpty();
    assertThat(trial.printed()).isEqualTo("12");
  }

  @Test
  void everyWayToPrintReachesTheCell() {
    trial.run(
        """
        System.out.println(); System.out.print('c'); System.out.print(new char[] {'d'});
        System.out.printf(Locale.ROOT, "%d", 1).append("xyz", 0, 2).append('!');
        System.out.write(65); System.out.write("é".getBytes("UTF-8"));
        System.out.println(2L); System.out.println(1.5f); System.out.println((Object) null);""");
    assertThat(trial.printed())
        .isEqualTo("\ncd1xy!Aé2\n1.5\nnull\n".replace("\n", System.lineSeparator()));
  }

  @Test
  void anEndlessRecursionEndsAndItsTraceIsShort() {
    var failure =
        trial.run("int down(int n) { return 1 + down(n + 1); }\ndown(0)").failure().orElseThrow();
    assertThat(failure.name()).contains("StackOverflowError");
    assertThat(failure.trace()).hasSizeLessThan(60);
    assertThat(trial.shown("1")).isEqualTo("1");
  }

  @Test
  void aClassThatIsTooLargeIsRefusedAndForgotten() {
    var constants =
        IntStream.range(0, 70_000)
            .mapToObj(n -> "t" + n % 7 + " += " + n * 40_000L + "L;")
            .collect(Collectors.joining());
    var code = new StringBuilder("long big() { long t0=0,t1=0,t2=0,t3=0,t4=0,t5=0,t6=0;");
    code.append(constants, 0, 200_000).append(" t0++; return t0; }");
    var cut = code.toString().replaceFirst("; *t\\d? ?[^;]*$", "; return t0; }");
    assertThat(trial.run(cut.endsWith("}") ? cut : cut + "}").failure()).isPresent();
    assertThat(trial.shown("1 + 1")).isEqualTo("2");
  }

  @Test
  void aLongCellIsEvaluatedWhole() {
    var lines = IntStream.range(0, 5_000).mapToObj(n -> "z += " + n + ";");
    assertThat(trial.shown("long z = 0;\n" + lines.collect(Collectors.joining("\n")) + "\nz"))
        .isEqualTo("12497500");
  }

  @Test
  void aFailureInALongCellNamesItsLineAndKeepsWhatRan() {
    var lines =
        IntStream.range(0, 100)
            .mapToObj(n -> n == 60 ? "z = 1 / (z - z);" : "z++;")
            .collect(Collectors.joining("\n"));
    var failure = trial.run("int z = 0;\n" + lines).failure().orElseThrow();
    assertThat(failure.place().line()).isEqualTo(62);
    assertThat(trial.shown("z")).isEqualTo("60");
  }

  @Test
  void whatStandsBeforeARefusedLineOfALongCellRuns() {
    var lines =
        IntStream.range(0, 100)
            .mapToObj(n -> n == 60 ? "unknown();" : "z++;")
            .collect(Collectors.joining("\n"));
    var failure = trial.run("int z = 0;\n" + lines).failure().orElseThrow();
    assertThat(failure.kind()).isEqualTo(CellFailure.Kind.COMPILATION);
    assertThat(failure.place().line()).isEqualTo(62);
    assertThat(trial.shown("z")).isEqualTo("60");
  }

  @Test
  void resultsWithoutANameAreKeptWhileSomethingRefersToThem() {
    trial.run("new int[] {4, 5}");
    trial.run("var kept = $1;\nint first() { return $1[0]; }");
    trial.run("1");
    trial.run("2");
    assertThat(trial.shown("kept[1] + first() + $1.length")).isEqualTo("11");
  }

  @Test
  void resultsWithoutANameCostTheLaterCellsNothing() {
    for (var cell = 0; cell < 20; cell++) {
      trial.run(cell + "");
    }
    assertThat(trial.run("$3").failure().orElseThrow().message())
        .contains("$3 was a result without a name");
    assertThat(trial.evaluator().variables()).isEmpty();
  }

  @Test
  void theThreadsOfAClosedEvaluatorEnd() throws InterruptedException {
    trial.run(
        "var t = new Thread(() -> { while (true) { } }, \"left over\");\nt.setDaemon(true);\nt.start();");
    trial.close();
    var left =
        Thread.getAllStackTraces().keySet().stream()
            .filter(thread -> thread.getName().equals("left over"))
            .toList();
    for (var thread : left) {
      thread.join(60_000);
      assertThat(thread.isAlive()).isFalse();
    }
  }
}
