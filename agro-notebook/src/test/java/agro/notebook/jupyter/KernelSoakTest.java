package agro.notebook.jupyter;

import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.jupyter.KernelClient.Lane;
import com.google.gson.JsonObject;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Two thousand cells of every kind in one kernel. */
@Tag("slow")
@Timeout(1_200)
class KernelSoakTest {

  private static final int CELLS = 2_000;
  private static final int WARM_UP = 200;
  private static final long MAY_GROW_BYTES = 60L << 20;
  private static final int MAY_GROW_THREADS = 3;

  private static final String PICTURE =
      "var picture = new java.awt.image.BufferedImage(64, 48,"
          + " java.awt.image.BufferedImage.TYPE_INT_RGB); picture";

  @Test
  void memoryAndThreadsStayLevel() throws InterruptedException {
    try (var kernel = new KernelInProcess();
        var client = kernel.connect()) {
      var random = new Random(42);
      run(client, random, WARM_UP);
      var memory = memory();
      var threads = Thread.activeCount();
      run(client, random, CELLS - WARM_UP);

      assertThat(client.execute("6 * 7").result()).isEqualTo("42");
      assertThat(Thread.activeCount()).isLessThanOrEqualTo(threads + MAY_GROW_THREADS);
      assertThat(memory() - memory).isLessThan(MAY_GROW_BYTES);
      assertThat(kernel.complaints()).isEmpty();
    }
  }

  private static void run(KernelClient client, Random random, int cells) {
    for (var cell = 0; cell < cells; cell++) {
      switch (random.nextInt(20)) {
        case 0 -> interrupted(client, "Thread.sleep(600_000);");
        case 1, 2 -> failed(client, "throw new IllegalStateException(\"as expected\");");
        case 3 -> failed(client, "int broken = ;");
        case 4 ->
            failed(client, "new Object() { int deep(int n) { return 1 + deep(n); } }.deep(0)");
        case 5 -> printed(client);
        case 6, 7 -> assertThat(client.execute(PICTURE).of("execute_result")).hasSize(1);
        case 8 -> client.execute("display(\"shown \" + " + cell + "); clearOutput(true);");
        case 9 -> asked(client);
        case 10 -> client.execute("int changing() { return " + cell + "; }");
        case 11 -> client.execute("byte[] bytes = new byte[1_000_000];");
        default ->
            assertThat(client.execute(cell + " + 1").result()).isEqualTo(String.valueOf(cell + 1));
      }
      client.discard();
    }
  }

  private static void failed(KernelClient client, String code) {
    assertThat(client.execute(code).status()).isEqualTo("error");
  }

  private static void printed(KernelClient client) {
    var ran = client.execute("for (int i = 0; i < 5_000; i++) System.out.println(\"line \" + i);");
    assertThat(ran.printed("stdout").lines()).hasSize(5_000);
  }

  private static void asked(KernelClient client) {
    client.ask("complete_request", KernelClient.code("Math.ab"));
    client.ask("inspect_request", KernelClient.code("Math.abs("));
    client.ask("is_complete_request", KernelClient.code("int n ="));
  }

  private static void interrupted(KernelClient client, String code) {
    var cell = client.start(code);
    client.output(
        message -> message.type().equals("execute_input") && KernelClient.isFor(message, cell));
    client.askOn(Lane.CONTROL, "interrupt_request", new JsonObject());
    assertThat(client.finish(cell).status()).isEqualTo("error");
  }

  /** What is in use when nothing more can be collected. */
  private static long memory() throws InterruptedException {
    var runtime = Runtime.getRuntime();
    for (var round = 0; round < 5; round++) {
      System.gc();
      TimeUnit.MILLISECONDS.sleep(100);
    }
    return runtime.totalMemory() - runtime.freeMemory();
  }
}
