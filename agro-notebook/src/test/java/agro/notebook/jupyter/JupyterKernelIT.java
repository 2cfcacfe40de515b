package agro.notebook.jupyter;

import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.jupyter.KernelClient.Lane;
import com.google.gson.JsonObject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The kernel as a front end starts it. */
@Timeout(240)
class JupyterKernelIT {

  @TempDir private Path folder;

  private static JsonObject restart(boolean restart) {
    var content = new JsonObject();
    content.addProperty("restart", restart);
    return content;
  }

  @Test
  void runsCellsAndEndsWhenItIsShutDown() throws Exception {
    try (var kernel = new ForkedKernel(folder);
        var client = kernel.connect()) {
      assertThat(client.execute("\"\u00e4\uD83E\uDD8B\"").result()).isEqualTo("\u00e4\uD83E\uDD8B");
      client.execute("int f() { return 1; }");
      client.execute("var v = f();");
      client.execute("int f() { return 2; }");
      assertThat(client.execute("v + \",\" + f()").result()).isEqualTo("1,2");
      assertThat(client.execute("System.out.println(\"to the cell\");").printed("stdout"))
          .isEqualTo("to the cell\n");

      var reply = client.askOn(Lane.CONTROL, "shutdown_request", restart(true));
      assertThat(reply.get("restart").getAsBoolean()).isTrue();
      assertThat(client.output(message -> message.type().equals("shutdown_reply")).content())
          .isEqualTo(reply);
      assertThat(kernel.awaitExit()).isZero();
      assertThat(kernel.out()).isEmpty();
      assertThat(kernel.err()).isEmpty();
      assertThat(folder.resolve("data/agro/history.jsonl")).content().contains("var v = f();");
    }
  }

  @Test
  void endsAlthoughACellHoldsItUp() throws Exception {
    try (var kernel = new ForkedKernel(folder);
        var client = kernel.connect()) {
      client.execute(
          "Runtime.getRuntime().addShutdownHook(new Thread(() -> { while (true) {"
              + " Thread.onSpinWait(); } }));");
      client.execute("new Thread(() -> { while (true) { Thread.onSpinWait(); } }).start();");
      var cell = client.start("Thread.sleep(600_000);");
      client.output(message -> message.type().equals("execute_input"));
      assertThat(cell).isNotEmpty();
      client.ask("shutdown_request", restart(false));
      assertThat(kernel.awaitExit()).isZero();
    }
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void signalsInterruptAndEnd() throws Exception {
    try (var kernel = new ForkedKernel(folder);
        var client = kernel.connect()) {
      var cell = client.start("Thread.sleep(600_000);");
      client.output(message -> message.type().equals("execute_input"));
      var pid = Long.toString(kernel.process().pid());
      signal("-INT", pid);
      assertThat(client.finish(cell).status()).isEqualTo("error");
      assertThat(client.execute("6 * 7").result()).isEqualTo("42");
      signal("-TERM", pid);
      assertThat(kernel.awaitExit()).isZero();
    }
  }

  private static void signal(String name, String pid) throws Exception {
    assertThat(new ProcessBuilder("kill", name, pid).start().waitFor()).isZero();
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void endsWhenItsParentIsGone() throws Exception {
    var parent = new ProcessBuilder("sleep", "600").start();
    try (var kernel = ForkedKernel.childOf(folder, parent.pid());
        var client = kernel.connect()) {
      assertThat(client.execute("6 * 7").result()).isEqualTo("42");
      parent.destroyForcibly();
      assertThat(kernel.awaitExit()).isZero();
    }
  }

  @Test
  void survivesWhatCellsDoToTheMachine() throws IOException {
    try (var kernel = new ForkedKernel(folder, "-Xmx160m");
        var client = kernel.connect()) {
      for (var code :
          new String[] {
            "int deep(int n) { return 1 + deep(n); } deep(0)",
            "var all = new ArrayList<byte[]>(); while (true) all.add(new byte[1 << 20]);",
            "all = null; var small = new LinkedList<Object>(); while (true) small.add(new Object());",
            "small = null; throw new Error() { public String toString() { throw new Error(); } };",
            "new Object() { public String toString() { throw new StackOverflowError(); } }"
          }) {
        var status = client.execute(code).status();
        assertThat(status).as(code).isIn("error", "ok");
        var info = client.askOn(Lane.CONTROL, "kernel_info_request", new JsonObject());
        assertThat(Json.text(info, "status", "")).isEqualTo("ok");
        assertThat(client.heartbeat("ping")).isEqualTo("ping");
      }
      client.execute("small = null; all = null;");
      var after = client.execute("6 * 7");
      assertThat(after.result()).as(after.toString()).isEqualTo("42");
    }
  }

  @Test
  void aBrokenConnectionFileIsExplained() throws Exception {
    var broken = Files.writeString(folder.resolve("broken.json"), "{\"shell_port\": 1");
    for (var file : new String[] {broken.toString(), folder.resolve("none.json").toString()}) {
      var process = ForkedKernel.start(folder, file, ProcessHandle.current().pid());
      assertThat(process.waitFor(1, TimeUnit.MINUTES)).isTrue();
      assertThat(process.exitValue()).isEqualTo(1);
      assertThat(Files.readString(folder.resolve("err.txt")))
          .contains("Expected:", "Why:", "Mend:")
          .doesNotContain("\tat ");
      assertThat(folder.resolve("out.txt")).isEmptyFile();
    }
  }

  @Test
  @Tag("slow")
  void survivesHostileMessages() throws IOException {
    var marker = folder.resolve("marker.txt");
    var code = "Files.createFile(Path.of(\"" + marker.getFileName() + "\"));";
    try (var kernel = new ForkedKernel(folder);
        var client = kernel.connect();
        var hostile = new HostileMessages(client, code, 99)) {
      for (var sent = 0; sent < 5_000; sent++) {
        hostile.send();
      }
      assertThat(client.execute("6 * 7").result()).isEqualTo("42");
      assertThat(marker).doesNotExist();
      assertThat(kernel.err().lines().count()).isLessThan(60);
    }
  }
}
