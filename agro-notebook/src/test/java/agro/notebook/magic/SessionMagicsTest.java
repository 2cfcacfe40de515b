package agro.notebook.magic;

import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.display.MimeBundle;
import agro.notebook.kernel.CellEvaluator;
import agro.notebook.kernel.CellFailure.Kind;
import java.time.Duration;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SessionMagicsTest {

  private static CellEvaluator evaluator;

  @BeforeAll
  static void open() {
    evaluator = CellEvaluator.open();
  }

  @AfterAll
  static void close() {
    evaluator.close();
  }

  private static Evaluated evaluate(String... lines) {
    return Evaluated.by(evaluator, lines);
  }

  @Test
  void aRemainderIsNoMagic() {
    evaluate("int a = 17, b = 5, time = 4;");
    assertThat(evaluate("a", " % b").value()).isEqualTo(2);
    assertThat(evaluate("a", "%time").value()).isEqualTo(1);
    assertThat(evaluate("int c = a", "%b;", "c").value()).isEqualTo(2);
    assertThat(evaluate("(a", "%time", ")").value()).isEqualTo(1);
  }

  @Test
  void textAndCommentsHoldNoMagics() {
    assertThat(evaluate("var text = \"\"\"", "%time 1", "%%time", "\"\"\";", "text").value())
        .isEqualTo("%time 1\n%%time\n");
    assertThat(evaluate("/*", "%maven a:b", "*/ 3").value()).isEqualTo(3);
    assertThat(evaluate("// about", "%time 4").value()).isEqualTo(4);
  }

  @Test
  void aMagicStandsFirstOnItsLine() {
    assertThat(evaluate("int d = 1; %time d").failure().kind()).isEqualTo(Kind.COMPILATION);
    assertThat(evaluate("int e = 1;", "   %time e").value()).isEqualTo(1);
  }

  @Test
  void timeKeepsTheValueAndComesAfterTheOutput() {
    var timed = evaluate("%time System.out.print(\"said \"); 6 * 7");
    assertThat(timed.value()).isEqualTo(42);
    assertThat(timed.output())
        .matches("(?s)said Wall time: [\\d.]+ (µs|ms|s), CPU time of all threads: .*");
    assertThat(evaluate("%time var kept = List.of(1, 2);", "kept.size()").value()).isEqualTo(2);
    assertThat(evaluate("%time 1;").result().value().present()).isFalse();
  }

  @Test
  void timeTakesAStatementThatGoesOnBelow() {
    var timed =
        evaluate("int sum = 0;", "%time for (int i = 1; i < 4; i++) {", "  sum += i;", "}", "sum");
    assertThat(timed.value()).isEqualTo(6);
    assertThat(evaluate("%time 1", "%time 2").output().split("Wall time")).hasSize(3);
  }

  @Test
  void timeTakesAWholeCell() {
    var timed =
        evaluate("%%time", "int half = 21;", "System.out.println(\"on the way\");", "2 * half");
    assertThat(timed.value()).isEqualTo(42);
    assertThat(timed.result().declared()).extracting("name").containsExactly("half");
    assertThat(timed.output()).startsWith("on the way\nWall time: ");
    assertThat(evaluate("%%time record Pair(int a, int b) {}", "new Pair(1, 2).b()").value())
        .isEqualTo(2);
  }

  @Test
  void failuresStandOnTheirOwnLine() {
    var refused = evaluate("%%time", "", "int wrong = \"x\";").failure();
    assertThat(refused.place()).hasToString("cell 3, line 3");
    assertThat(refused.trace()).contains("    int wrong = \"x\";");
    var thrown = evaluate("int x = 1;", "%time Integer.parseInt(\"no\")");
    assertThat(thrown.failure().place()).hasToString("cell 3, line 2");
    assertThat(thrown.failure().trace()).contains("  >   2  %time Integer.parseInt(\"no\")");
    assertThat(thrown.output()).contains("Wall time");
  }

  @Test
  void aCellMagicStandsOnTheFirstLine() {
    var failure = evaluate("int late = 1;", "%%time", "late").failure();
    assertThat(failure.message()).contains("%%time must be on the first line");
    assertThat(failure.place()).hasToString("cell 3, line 2");
    assertThat(evaluate("%list", "late").value()).isEqualTo(1);
  }

  @ParameterizedTest
  @CsvSource({
    "%tim 1, there is no magic %tim; is it %time?",
    "%addMavenDependancy a:b:1, is it %addMavenDependencies or %addMavenDependency?",
    "%zzz, '%zzz; %magics lists them all'",
    "%%maven a:b:1, '%%maven is written %maven, on a line of its own'",
    "%time, %time has nothing to time",
    "'%jars \"lib', a quotation mark is not closed",
    "%list colours, \"\"\"colours\"\" is not a kind of declaration\""
  })
  void mistakesAreExplained(String line, String message) {
    var failure = evaluate(line).failure();
    assertThat(failure.message()).contains(message.replace("\"\"", "\"").replaceAll("^\"|\"$", ""));
    assertThat(failure.place()).hasToString("cell 3, line 1");
    assertThat(failure.trace()).contains("    " + line);
  }

  @Test
  void declarationsAreListed() {
    evaluate("double traps = 12.5;", "int twice(int n) { return 2 * n; }", "enum Side { LEFT }");
    evaluate("1 + 1");
    evaluate("String unset = null;");
    evaluate("var bad = new Object() { public String toString() { throw new Error(); } };");
    evaluate("var lines = \"first\\nsecond\"; int[] many = {1, 2};");
    assertThat(evaluate("%list").output())
        .contains("traps", "double", "12.5")
        .contains("twice", "(int)int")
        .contains("Side", "enum")
        .contains("java.util.stream.*")
        .doesNotContain("$1");
    assertThat(evaluate("%vars").output())
        .contains("traps", "unset", "first ...", "[1, 2]")
        .contains("(its toString threw java.lang.Error)")
        .doesNotContain("twice", "second");
    assertThat(evaluate("%list methods").output()).contains("twice").doesNotContain("traps");
  }

  @Test
  void magicsAreListed() {
    var all = evaluate("%magics").output();
    assertThat(all).contains("%maven", "%loadFromPOM", "%%time", "%addMavenRepo", "%classpath");
    assertThat(evaluate("%help").output()).isEqualTo(all);
  }

  @Test
  void magicsMayStandInTimedCodeAndAnyLineEndsWork() {
    assertThat(evaluate("%time %time 5").output().split("Wall time", -1)).hasSize(3);
    assertThat(evaluate("%%time", "%vars", "6").value()).isEqualTo(6);
    assertThat(evaluate("int crlf = 7;\r\n%time crlf\r\n").value()).isEqualTo(7);
    assertThat(evaluate("%time \"\u2028\".length()").value()).isEqualTo(1);
  }

  @Test
  void namesAreKnownForCompletion() {
    assertThat(evaluator.magicNames())
        .contains("%time", "%%time", "%maven", "%addMavenRepo", "%%loadFromPOM")
        .doesNotContain("%%maven");
  }

  @Test
  void aMagicInTheMiddleGivesTheValueOfTheLastStatement() {
    var result = evaluate("1;", "%time 2", "3", "%time 4").result();
    assertThat(result.value().shown().get(MimeBundle.TEXT)).contains("4");
  }

  @Test
  void aMagicMayFollowAnExpressionWithoutSemicolon() {
    assertThat(evaluate("int n = 8", "%time n").value()).isEqualTo(8);
    assertThat(evaluate("n", "%list", "n + 1").value()).isEqualTo(9);
    assertThat(evaluate("n % (", "%time", ")").failure().kind()).isEqualTo(Kind.COMPILATION);
  }

  @ParameterizedTest
  @CsvSource({
    "400, 0 µs",
    "1500, 2 µs",
    "2500000, 2.50 ms",
    "123456789, 123 ms",
    "4000000000, 4.00 s",
    "59900000000, 59.9 s",
    "125000000000, 2 min 5 s"
  })
  void durationsAreForPeople(long nanos, String words) {
    assertThat(TimeMagic.words(Duration.ofNanos(nanos))).isEqualTo(words);
  }
}
