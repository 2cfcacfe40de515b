package agro.notebook.display;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.notebook.display.ProgressBar.Ending;
import agro.report.Progress;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A bar comes late, is drawn seldom, tells rate and time left, and goes. */
class ProgressBarTest {

  private static final long MILLI = 1_000_000;

  private long now;
  private final List<String> seen = new ArrayList<>();
  private final DisplaySink sink =
      new DisplaySink() {
        @Override
        public void show(String id, MimeBundle bundle) {
          seen.add("show " + bundle.plainText());
        }

        @Override
        public void update(String id, MimeBundle bundle) {
          seen.add(bundle.isEmpty() ? "gone" : "update " + bundle.plainText());
        }

        @Override
        public void clear(boolean wait) {
          seen.add("clear");
        }
      };

  private ProgressBar bar(Ending ending) {
    return new ProgressBar(new DisplayFace(sink), ending, () -> now);
  }

  private void work(Progress bar, String what, int steps, long milliseconds) {
    for (var done = 0; done < steps; done++) {
      bar.step(what, done, steps);
      now += milliseconds * MILLI;
    }
    bar.step(what, steps, steps);
  }

  @Test
  void quickWorkShowsNothing() {
    work(bar(Ending.SUMMARY), "fit", 49, 10);
    assertThat(seen).isEmpty();
  }

  @Test
  void longWorkIsShownWithRateAndTimeLeftAndSummedUp() {
    work(bar(Ending.SUMMARY), "fit", 10, 250);
    assertThat(seen)
        .hasSize(9)
        .startsWith(
            "show fit: 2 of 10, 20 %, 4.0 per second, 2.0 s left",
            "update fit: 3 of 10, 30 %, 4.0 per second, 1.8 s left")
        .endsWith("update fit: 10 in 2.5 s");
  }

  @Test
  void aBarIsDrawnAtMostTenTimesASecond() {
    work(bar(Ending.REMOVED), "fit", 10_000, 1);
    assertThat(seen).hasSizeBetween(90, 97).endsWith("gone");
  }

  @Test
  void partsOfOneWorkShareTheBar() {
    var bar = bar(Ending.REMOVED);
    work(bar, "search", 2, 400);
    work(bar, "check", 2, 100);
    assertThat(seen)
        .containsExactly(
            "show check: 0 of 2, 0 %",
            "update check: 1 of 2, 50 %, 10 per second, 0.1 s left", "gone");
  }

  @Test
  void anotherWorkAfterAPauseBeginsAnew() {
    var bar = bar(Ending.SUMMARY);
    work(bar, "first", 2, 600);
    now += 60_000 * MILLI;
    work(bar, "second", 2, 10);
    work(bar, "third", 2, 900);
    assertThat(seen)
        .containsExactly(
            "show first: 1 of 2, 50 %, 1.7 per second, 0.6 s left",
            "update first: 2 in 1.2 s",
            "show third: 1 of 2, 50 %, 1.1 per second, 0.9 s left",
            "update third: 2 in 1.8 s");
  }

  @Test
  void interruptCancelsAndSaysWhere() {
    var bar = bar(Ending.REMOVED);
    work(bar, "fit", 2, 600);
    seen.clear();
    bar.step("again", 3, 9);
    Thread.currentThread().interrupt();
    try {
      assertThatThrownBy(() -> bar.step("again", 4, 9)).isInstanceOf(CancellationException.class);
    } finally {
      assertThat(Thread.interrupted()).isTrue();
    }
    assertThat(seen).last().isEqualTo("update again: stopped at 4 of 9 after 0.0 s");
  }

  @Test
  void loopsMoveTheBar() {
    var bar = bar(Ending.SUMMARY);
    var sum = 0;
    for (var values = bar.steps(List.of(1, 2, 3), "loop"); values.hasNext(); ) {
      sum += values.next();
      now += 400 * MILLI;
    }
    assertThat(sum).isEqualTo(6);
    assertThat(seen)
        .containsExactly(
            "show loop: 2 of 3, 66 %, 2.5 per second, 0.4 s left", "update loop: 3 in 1.2 s");
  }

  @Test
  void loopsOfUnknownLengthCount() {
    Iterable<Integer> odd = () -> IntStream.of(1, 3, 5).iterator();
    var values = bar(Ending.SUMMARY).steps(odd, "odd <numbers>");
    while (values.hasNext()) {
      values.next();
      now += 300 * MILLI;
    }
    assertThat(seen)
        .containsExactly(
            "show odd <numbers>: 2 so far, 3.3 per second", "update odd <numbers>: 3 in 0.9 s");
  }

  @Test
  void aBarHasAnElementOfItsOwnAndIsEscaped() {
    var html = new ProgressState("a <b>", 3, 4, 90).bundle().get(MimeBundle.HTML).orElseThrow();
    assertThat(html)
        .contains("<progress max=\"4\" value=\"3\">75 %</progress>")
        .contains("a &lt;b&gt;")
        .contains("2.0 per minute, 30 s left");
    assertThat(ProgressState.time(3_725)).isEqualTo("1 h 2 min");
  }

  @Test
  void aPlainProgramSeesLinesAndATerminalOneLine() {
    assertThat(printed(false).lines())
        .containsExactly(
            "fit: 1 of 20, 5 %, 1.0 per second, 19 s left",
            "fit: 6 of 20, 30 %, 1.0 per second, 14 s left",
            "fit: 11 of 20, 55 %, 1.0 per second, 9.0 s left",
            "fit: 16 of 20, 80 %, 1.0 per second, 4.0 s left",
            "fit: 20 in 20 s");
    var terminal = printed(true);
    assertThat(terminal.lines().filter(line -> !line.isEmpty()))
        .last()
        .asString()
        .startsWith("fit: 20 in 20 s");
    assertThat(terminal).contains("\rfit: 19 of 20");
    assertThat(terminal.chars().filter(c -> c == '\n')).hasSize(1);
  }

  private String printed(boolean terminal) {
    var bytes = new ByteArrayOutputStream();
    var stream = new PrintStream(bytes, true, StandardCharsets.UTF_8);
    work(
        new ProgressBar(new ConsoleFace(stream, terminal), Ending.SUMMARY, () -> now),
        "fit",
        20,
        1_000);
    return bytes.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
  }

  @Test
  void threadsWithADisplayShowWhatTheLibraryDoes() throws InterruptedException {
    var thread =
        new Thread(
            () -> {
              Display.connect(sink);
              seen.add(Progress.ofThread().getClass().getSimpleName());
              Display.connect(null);
              seen.add(String.valueOf(Progress.ofThread() instanceof ProgressBar));
            });
    thread.start();
    thread.join();
    assertThat(seen).containsExactly("ProgressBar", "false");
  }
}
