package agro.notebook.jupyter;

import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.kernel.StandardStream;
import com.google.gson.JsonObject;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(60)
class OutputQueueTest {

  private static final int MEBIBYTE = 1 << 20;

  private final OutputQueue queue = new OutputQueue(64L << 20);
  private final JsonObject parent = new JsonObject();

  private void print(StandardStream stream, String text) throws InterruptedException {
    queue.addText(parent, stream, text);
  }

  private String taken() throws InterruptedException {
    var next = queue.take();
    return next.type() + " " + Json.text(next.body().content(), "text", "");
  }

  @Test
  void joinsTextUntilSomethingElseFollows() throws InterruptedException {
    print(StandardStream.OUTPUT, "a");
    print(StandardStream.OUTPUT, "b");
    print(StandardStream.ERROR, "c");
    print(StandardStream.OUTPUT, "d");
    queue.add(Publication.output("status", parent, new JsonObject(), 0));

    assertThat(taken()).isEqualTo("stream ab");
    assertThat(taken()).isEqualTo("stream c");
    assertThat(taken()).isEqualTo("stream d");
    assertThat(taken()).isEqualTo("status ");
    assertThat(queue.waiting()).isZero();
  }

  @Test
  void textOfAnotherCellIsNotJoined() throws InterruptedException {
    print(StandardStream.OUTPUT, "a");
    var other = new JsonObject();
    other.addProperty("msg_id", "other");
    queue.addText(other, StandardStream.OUTPUT, "b");
    queue.close();

    assertThat(taken()).isEqualTo("stream a");
    assertThat(taken()).isEqualTo("stream b");
    assertThat(queue.take()).isNull();
  }

  @Test
  void textThatNothingFollowsIsSentAllTheSame() throws InterruptedException {
    print(StandardStream.OUTPUT, "alone");
    assertThat(taken()).isEqualTo("stream alone");
  }

  @Test
  void longTextIsCutBetweenCharacters() throws InterruptedException {
    var text = "x" + "\uD83E\uDD8B".repeat(100_000);
    print(StandardStream.OUTPUT, text);
    queue.close();

    var all = new StringBuilder();
    for (var next = queue.take(); next != null; next = queue.take()) {
      var piece = Json.text(next.body().content(), "text", "");
      assertThat(piece.length()).isLessThanOrEqualTo(64 << 10);
      assertThat(Character.isHighSurrogate(piece.charAt(piece.length() - 1))).isFalse();
      all.append(piece);
    }
    assertThat(all.toString()).isEqualTo(text);
  }

  @Test
  void whoAddsTooMuchWaitsUntilThereIsRoom() throws Exception {
    fill();
    var added = CompletableFuture.runAsync(() -> addQuietly(new AtomicReference<>()));
    assertThat(added).isNotDone();
    // What belongs to the kernel itself never waits.
    queue.add(Publication.output("status", parent, new JsonObject(), 0));
    assertThat(added).isNotDone();
    queue.take();
    queue.take();
    added.get(1, TimeUnit.MINUTES);
  }

  @Test
  void waitingEndsByInterruptAndByRelease() throws Exception {
    fill();
    var caught = new AtomicReference<InterruptedException>();
    var waiting = new Thread(() -> addQuietly(caught));
    waiting.start();
    awaitWaiting(waiting);
    waiting.interrupt();
    waiting.join();
    assertThat(caught.get()).isNotNull();

    caught.set(null);
    var released = new Thread(() -> addQuietly(caught));
    released.start();
    awaitWaiting(released);
    queue.release();
    released.join();
    assertThat(caught.get()).isNotNull();
  }

  @Test
  void theBoundIsInBytes() throws InterruptedException {
    fill();
    assertThat(queue.waiting()).isBetween(62L * MEBIBYTE, 64L * MEBIBYTE);
  }

  private void fill() throws InterruptedException {
    for (var at = 0; at < 63; at++) {
      queue.addOutput(Publication.output("display_data", parent, new JsonObject(), MEBIBYTE));
    }
  }

  private void addQuietly(AtomicReference<InterruptedException> caught) {
    try {
      queue.addOutput(Publication.output("display_data", parent, new JsonObject(), 2 * MEBIBYTE));
    } catch (InterruptedException e) {
      caught.set(e);
    }
  }

  private static void awaitWaiting(Thread thread) throws InterruptedException {
    while (thread.getState() != Thread.State.WAITING) {
      TimeUnit.MILLISECONDS.sleep(5);
    }
  }
}
