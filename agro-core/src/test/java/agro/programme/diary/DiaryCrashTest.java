package agro.programme.diary;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Ends the writing process at any moment and looks at what is left. */
class DiaryCrashTest {

  private static final int ENTRIES = 200;

  @TempDir Path folder;

  @Test
  @Timeout(60)
  void oneKillLosesNothing() throws Exception {
    killedAfter(new Random(7).nextInt(60), List.of());
  }

  @Tag("slow")
  @Test
  @Timeout(600)
  void manyKillsAtRandomMomentsLoseNoFinishedEntryAndLeaveNoHalfLine() throws Exception {
    var random = new Random(20270601);
    List<String> finished = List.of();
    int runs = 0;
    for (int season = 0; season < 6; season++) {
      Files.deleteIfExists(folder.resolve("applied.csv"));
      finished = List.of();
      for (int run = 0; run < 5; run++) {
        finished = killedAfter(random.nextInt(ENTRIES), finished);
        runs++;
      }
      assertThat(finished).isNotEmpty();
    }
    assertThat(runs).isEqualTo(30);
  }

  /** Kills the process a random moment after so many entries; gives all entries ever finished. */
  private List<String> killedAfter(int entries, List<String> before) throws Exception {
    var process = DiaryWriterProcess.start(folder, "run", ENTRIES).start();
    var finished = new ArrayList<>(before);
    try (var lines =
        new BufferedReader(
            new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
      assertThat(lines.readLine()).isEqualTo("ready");
      for (int i = 0; i < entries; i++) {
        finished.add(lines.readLine());
      }
      Thread.sleep(Duration.ofNanos(new Random(entries).nextInt(5_000_000)).toMillis());
      process.destroyForcibly();
      for (var line = rest(lines); line != null; line = rest(lines)) {
        if (line.startsWith("applied-")) {
          finished.add(line);
        }
      }
    } finally {
      process.destroyForcibly();
    }
    assertThat(process.waitFor(30, TimeUnit.SECONDS)).isTrue();
    checked(finished);
    return finished;
  }

  /** A line that was cut off by the kill says nothing. */
  private static String rest(BufferedReader lines) {
    try {
      return lines.readLine();
    } catch (IOException streamClosedByTheKill) {
      return null;
    }
  }

  private void checked(List<String> finished) throws IOException {
    var file = folder.resolve("applied.csv");
    if (!Files.exists(file)) {
      assertThat(finished).isEmpty();
      return;
    }
    assertThat(Files.readString(file)).endsWith("\n");
    var entries = Diary.in(folder).read().all(AppliedUse.class);
    var found = new HashSet<String>();
    for (var entry : entries) {
      found.add(entry.id());
      var spraying = entry.what().spraying();
      assertThat(spraying.cropStage()).endsWith(", with a comma and \"quotes\"");
      assertThat(spraying.products()).hasSize(2);
    }
    assertThat(found).containsAll(finished);
    // At most one entry may stand there that its writer could not report any more.
    assertThat(found.size()).isEqualTo(entries.size());
  }

  @Test
  @Timeout(120)
  void twoProcessesAtOnceLoseNoLine() throws Exception {
    var first = DiaryWriterProcess.start(folder, "first", 40).start();
    var second = DiaryWriterProcess.start(folder, "second", 40).start();
    first.getInputStream().readAllBytes();
    second.getInputStream().readAllBytes();
    assertThat(first.waitFor(60, TimeUnit.SECONDS)).isTrue();
    assertThat(second.waitFor(60, TimeUnit.SECONDS)).isTrue();

    var entries = Diary.in(folder).read().all(AppliedUse.class);
    assertThat(entries).hasSize(80);
    assertThat(entries.stream().filter(entry -> entry.by().equals("first"))).hasSize(40);
    assertThat(entries.stream().map(DiaryEntry::id).distinct()).hasSize(80);
  }

  @Test
  @Timeout(60)
  void threadsOfOneProcessLoseNoLine() throws Exception {
    var threads = new ArrayList<Thread>();
    for (int i = 0; i < 4; i++) {
      var name = "thread " + i;
      var thread =
          new Thread(
              () -> {
                for (int j = 0; j < 10; j++) {
                  Diary.in(folder).append(DiaryWriterProcess.entry(j), name);
                }
              });
      threads.add(thread);
      thread.start();
    }
    for (var thread : threads) {
      thread.join();
    }
    assertThat(Diary.in(folder).read().all(AppliedUse.class)).hasSize(40);
  }
}
