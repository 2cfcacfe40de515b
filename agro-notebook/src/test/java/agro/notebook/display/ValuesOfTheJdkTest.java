package agro.notebook.display;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.TreeSet;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Values of the JDK are shown in words that tell a reader something. */
class ValuesOfTheJdkTest {

  private static String text(Object value) {
    return Display.render(value).plainText();
  }

  private static String html(Object value) {
    return Display.render(value).get(MimeBundle.HTML).orElse("");
  }

  @Test
  void arraysOfEveryTypeShowTheirValues() {
    assertThat(text(new boolean[] {true, false})).isEqualTo("[true, false]");
    assertThat(text(new byte[] {1, -1})).isEqualTo("[1, -1]");
    assertThat(text(new short[] {2})).isEqualTo("[2]");
    assertThat(text(new char[] {'a', 'é'})).isEqualTo("[a, é]");
    assertThat(text(new long[] {Long.MIN_VALUE})).isEqualTo("[-9223372036854775808]");
    assertThat(text(new float[] {1.5f, Float.NaN})).isEqualTo("[1.5, NaN]");
    assertThat(text(new String[] {"a", null})).isEqualTo("[a, null]");
    assertThat(text(new Object[] {new int[] {1}, List.of(new int[] {2})}))
        .isEqualTo("[[1], [[2]]]");
    assertThat(text(new int[0])).isEqualTo("[]");
  }

  @Test
  void rowsOfNumbersAreATableWithNumberedRowsAndColumns() {
    var jagged = new double[][] {{1, 2.5, 3}, {4}, {}};
    assertThat(text(jagged)).isEqualTo("[1.0, 2.5, 3.0]\n[4.0]\n[]");
    assertThat(html(jagged))
        .contains("<th scope=\"col\" class=\"agro-number\">2</th>")
        .contains("<th scope=\"row\" class=\"agro-number\">2</th>")
        .contains("<caption>3 rows of 3 values</caption>")
        .contains("<td class=\"agro-number\">2.5</td>");
    assertThat(html(List.of(List.of(1, 2), List.of(3, 4)))).contains(">4</td>");
    assertThat(html(new int[0][0])).isEmpty();
    assertThat(html(new int[][] {{1, 2}, null})).isEmpty();
  }

  @Test
  void largeMatricesAreCutInBothDirections() {
    var matrix = new int[1_000][1_000];
    matrix[999][999] = 77;
    assertThat(html(matrix))
        .contains(">77</td>", "The first 35 and the last 5 of 1000 rows")
        .contains("The first 15 and the last 5 of 1000 columns")
        .contains("<th scope=\"row\" class=\"agro-number\">999</th>")
        .hasSizeLessThan(60_000);
  }

  @Test
  @SuppressWarnings("JdkObsolete")
  void longCollectionsShowTheirEnds() {
    var numbers = IntStream.range(0, 50).boxed().toList();
    var ends = IntStream.range(0, 20).mapToObj(n -> n + ", ").collect(Collectors.joining());
    for (var values :
        List.of(
            numbers, new LinkedList<>(numbers), new TreeSet<>(numbers), new ArrayList<>(numbers))) {
      assertThat(text(values)).isEqualTo("[" + ends + "..., 47, 48, 49] (50 values)");
    }
    Deque<Integer> deque = new java.util.ArrayDeque<>(numbers);
    assertThat(text(deque)).endsWith("47, 48, 49] (50 values)");
  }

  @Test
  void mapsAreNestedAndBounded() {
    assertThat(text(Map.of("a", Map.of("b", new int[] {1, 2})))).isEqualTo("{a={b=[1, 2]}}");
    var large = new HashMap<Integer, Integer>();
    IntStream.range(0, 1_000).forEach(n -> large.put(n, n * n));
    assertThat(text(large)).endsWith("22=484, ... (1000 entries)}");
    assertThat(html(large)).contains("The first 40 of 1000 entries").contains("1521");
    assertThat(html(Map.of("x", "<script>"))).contains("&lt;script&gt;").doesNotContain("<script");
  }

  @Test
  void listsOfMapsAreTables() {
    assertThat(html(List.of(Map.of("trap", "T1"), Map.of("trap", "T2", "moths", 3))))
        .contains(">trap</th>", ">moths</th>", "<td class=\"agro-number\">3</td>");
  }

  @Test
  void optionalsShowWhatTheyHold() {
    assertThat(text(Optional.of(new int[] {1}))).isEqualTo("[1]");
    assertThat(text(Optional.empty())).isEqualTo("(nothing)");
    assertThat(text(OptionalInt.of(3))).isEqualTo("3");
    assertThat(text(OptionalLong.empty())).isEqualTo("(nothing)");
    assertThat(text(OptionalDouble.of(2.5))).isEqualTo("2.5");
    assertThat(html(Optional.of(Map.of("a", 1)))).contains("<table>");
  }

  @Test
  void streamsAndIteratorsStayUnread() {
    var stream = Stream.of(1, 2);
    assertThat(text(stream)).contains("unread").contains(".toList()");
    assertThat(stream.toList()).containsExactly(1, 2);
    assertThat(text(IntStream.of(1))).contains(".toArray()");
    var iterator = List.of(5).iterator();
    assertThat(text(iterator)).contains("unread");
    assertThat(iterator.next()).isEqualTo(5);
    assertThat(text(List.of(1).spliterator())).contains("unread");
  }

  @Test
  void otherValuesSayWhatTheyAre() {
    assertThat(text(TimeUnit.DAYS)).isEqualTo("DAYS");
    assertThat(text(String.class)).isEqualTo("class java.lang.String");
    assertThat(text(Path.of("a", "b"))).isEqualTo(Path.of("a", "b").toString());
    assertThat(text(Duration.ofMinutes(90))).isEqualTo("PT1H30M");
    assertThat(text(Instant.EPOCH)).isEqualTo("1970-01-01T00:00:00Z");
    assertThat(text((Runnable) () -> {})).isEqualTo("A lambda of type Runnable");
    assertThat(text('x')).isEqualTo("x");
  }

  @Test
  void throwablesShowTheirCausesAndNeverLoop() {
    var inner = new IllegalStateException("inner");
    var outer = new RuntimeException("outer", inner);
    inner.initCause(outer);
    assertThat(text(outer))
        .startsWith("java.lang.RuntimeException: outer\ncaused by java.lang.IllegalState")
        .contains("    at " + ValuesOfTheJdkTest.class.getName());
  }

  @Test
  void futuresAndThreadsShowTheirState() {
    var future = new CompletableFuture<String>();
    assertThat(text(future)).isEqualTo("CompletableFuture, not done yet");
    future.complete("yes");
    assertThat(text(future)).isEqualTo("CompletableFuture, done: yes");
    assertThat(text(CompletableFuture.failedFuture(new IllegalStateException("no"))))
        .isEqualTo("CompletableFuture, failed: java.lang.IllegalStateException: no");
    var cancelled = new CompletableFuture<String>();
    cancelled.cancel(true);
    assertThat(text(cancelled)).isEqualTo("CompletableFuture, cancelled");
    assertThat(text(new Thread(() -> {}, "counter"))).isEqualTo("Thread \"counter\", NEW");
  }

  @Test
  void wholeNumbersKeepAllDigits() {
    record Id(long number) {}
    assertThat(html(List.of(new Id(9_007_199_254_740_993L), new Id(1))))
        .contains("<td class=\"agro-number\">9007199254740993</td>");
    assertThat(html(Arrays.asList(new Id(Long.MIN_VALUE)))).contains("-9223372036854775808");
  }
}
