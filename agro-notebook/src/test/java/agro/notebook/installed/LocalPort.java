package agro.notebook.installed;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.concurrent.TimeUnit;

/** Programs that serve a port of this machine for the time of a test. */
final class LocalPort {

  private static final long PATIENCE_SECONDS = 120;
  private static final long PAUSE_MILLIS = 200;

  private LocalPort() {}

  static int free() throws IOException {
    try (var socket = new ServerSocket(0, 1, InetAddress.getByAddress(new byte[] {127, 0, 0, 1}))) {
      return socket.getLocalPort();
    }
  }

  /** Waits until an address answers with status 200. */
  static void awaitAnswer(URI address, Process server) throws IOException, InterruptedException {
    var http = HttpClient.newHttpClient();
    var request = HttpRequest.newBuilder(address).timeout(Duration.ofSeconds(10)).build();
    var end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
    while (System.nanoTime() < end && server.isAlive()) {
      try {
        if (http.send(request, HttpResponse.BodyHandlers.discarding()).statusCode() == 200) {
          return;
        }
      } catch (IOException notYet) {
        // The program has not opened its port.
      }
      Thread.sleep(PAUSE_MILLIS);
    }
    throw new IOException(address + " does not answer");
  }

  /** Ends a program and those that it started. */
  static void end(Process server) {
    var children = server.descendants().toList();
    server.destroy();
    try {
      server.waitFor(10, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    server.destroyForcibly();
    children.forEach(ProcessHandle::destroyForcibly);
  }
}
