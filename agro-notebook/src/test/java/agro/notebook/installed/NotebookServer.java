package agro.notebook.installed;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Debian's notebook server with the notebooks and the demonstration data in a folder of their own.
 *
 * @param process the server
 * @param port its port on the loopback interface
 * @param token what a browser must show
 */
record NotebookServer(Process process, int port, String token) implements AutoCloseable {

  private static final String TOKEN = "a-token-of-this-test";

  static NotebookServer start(InstalledKernel kernel, Path folder)
      throws IOException, InterruptedException {
    copy(InstalledKernel.TOP.resolve("notebooks"), folder.resolve("notebooks"));
    copy(InstalledKernel.TOP.resolve("demo-data"), folder.resolve("demo-data"));
    var port = LocalPort.free();
    var builder =
        new ProcessBuilder(
                "/usr/bin/jupyter-notebook",
                "--no-browser",
                "--allow-root",
                "--ip=127.0.0.1",
                "--port=" + port,
                "--NotebookApp.port_retries=0",
                "--NotebookApp.token=" + TOKEN,
                "--notebook-dir=" + folder)
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("server.txt").toFile());
    builder.environment().putAll(kernel.environment());
    var process = builder.start();
    try {
      LocalPort.awaitAnswer(
          URI.create("http://127.0.0.1:" + port + "/api/status?token=" + TOKEN), process);
    } catch (IOException | InterruptedException e) {
      LocalPort.end(process);
      throw e;
    }
    return new NotebookServer(process, port, TOKEN);
  }

  private static void copy(Path from, Path to) throws IOException {
    try (var files = Files.walk(from)) {
      for (var file : files.filter(Files::isRegularFile).toList()) {
        var target = to.resolve(from.relativize(file).toString());
        Files.createDirectories(target.getParent());
        Files.copy(file, target);
      }
    }
  }

  String address(String notebook) {
    return "http://127.0.0.1:" + port + "/notebooks/notebooks/" + notebook + "?token=" + token;
  }

  @Override
  public void close() {
    LocalPort.end(process);
  }
}
