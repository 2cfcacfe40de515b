package agro.generation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.Progress;
import agro.season.SeasonFolder;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/**
 * Long computations tell how far they are also when nobody gave them a listener, and can be ended.
 */
class LongWorkTest {

  private static final SeasonsUnderWay FOUR =
      new SeasonsUnderWay(21, InventedSeasons.Truth.usual(), 4);
  private static final Path VALE =
      Path.of(System.getProperty("basedir", ".")).resolve("../demo-data/osmere-vale");
  private static final FlightTiming TIMING = FlightTiming.searching(InventedSeasons.range());

  @AfterEach
  void listenNoMore() {
    Progress.listenOnThread(null);
    assertThat(Thread.interrupted()).isFalse();
  }

  private static Set<String> partsOf(Runnable work) {
    var parts = new LinkedHashSet<String>();
    Progress.listenOnThread(() -> (what, done, total) -> parts.add(what) || done <= total);
    work.run();
    return parts;
  }

  @Test
  void theThreadsListenerHearsOfFitAndForecast() {
    var fit = new AtomicReference<FlightTimingFit>();
    assertThat(partsOf(() -> fit.set(TIMING.fit(FOUR.past))))
        .containsExactly(
            "search of the interval",
            "interval season by season",
            "accuracy of the interval",
            "other thresholds");
    assertThat(partsOf(() -> GenerationForecast.of(fit.get(), FOUR.asOf(SeasonsUnderWay.AS_OF))))
        .containsExactly("season under way", "forecast");
  }

  @Test
  void theThreadsListenerHearsOfReading() {
    assertThat(partsOf(() -> SeasonFolder.read(VALE)))
        .containsExactly("reading the temperature logs");
  }

  @Test
  void threadsInheritTheListenerAndOthersAreSilent() throws InterruptedException {
    var heard = new ArrayList<String>();
    Progress.listenOnThread(() -> (what, done, total) -> heard.add(what));
    var child = new Thread(() -> Progress.ofThread().step("work", 1, 2));
    child.start();
    child.join();
    Progress.listenOnThread(null);
    Progress.ofThread().step("silent", 1, 2);
    assertThat(heard).containsExactly("work");
  }

  @Test
  void everyPartCanBeCancelled() {
    for (var part :
        List.of(
            "search of the interval", "interval season by season", "accuracy of the interval")) {
      Progress impatient = (what, done, total) -> !what.equals(part);
      assertThatThrownBy(() -> TIMING.fit(FOUR.past, impatient))
          .isInstanceOf(CancellationException.class)
          .hasMessageStartingWith(part);
    }
  }

  @Test
  void anInterruptEndsAFit() throws InterruptedException {
    var under = new CountDownLatch(1);
    var thrown = new AtomicReference<Throwable>();
    var worker =
        new Thread(
            () -> {
              try {
                while (true) {
                  under.countDown();
                  TIMING.fit(FOUR.past);
                }
              } catch (CancellationException cancelled) {
                thrown.set(cancelled);
              }
            });
    worker.start();
    assertThat(under.await(30, TimeUnit.SECONDS)).isTrue();
    worker.interrupt();
    worker.join(30_000);
    assertThat(worker.isAlive()).isFalse();
    assertThat(thrown.get()).hasMessageContaining("was cancelled after");
  }
}
