package agro.notebook.installed;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;

/** One window of a browser without a screen, led through the W3C WebDriver protocol. */
final class Browser implements AutoCloseable {

  private static final Duration PATIENCE = Duration.ofMinutes(2);
  private static final String ELEMENT = "element-6066-11e4-a52e-4f735466cecf";

  private final HttpClient http = HttpClient.newHttpClient();
  private final Process driver;
  private final URI session;

  private Browser(Process driver, URI session) {
    this.driver = driver;
    this.session = session;
  }

  /** Starts the driver and a browser of a given size, whose profile goes into a folder. */
  static Browser open(Path folder, int width, int height) throws IOException, InterruptedException {
    var port = LocalPort.free();
    var driver =
        new ProcessBuilder("/usr/bin/chromedriver", "--port=" + port)
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("driver.txt").toFile())
            .start();
    var top = URI.create("http://127.0.0.1:" + port);
    var starting = new Browser(driver, top);
    try {
      LocalPort.awaitAnswer(top.resolve("/status"), driver);
      var said = starting.send("POST", "session", capabilities(folder, width, height));
      var id = said.getAsJsonObject().get("sessionId").getAsString();
      return new Browser(driver, top.resolve("/session/" + id));
    } catch (IOException | InterruptedException | RuntimeException e) {
      LocalPort.end(driver);
      throw e;
    }
  }

  private static JsonObject capabilities(Path folder, int width, int height) {
    var arguments = new JsonArray();
    List.of(
            "--headless=new",
            "--no-sandbox",
            "--disable-gpu",
            "--disable-dev-shm-usage",
            "--window-size=" + width + "," + height,
            "--user-data-dir=" + folder.resolve("profile"))
        .forEach(arguments::add);
    var options = new JsonObject();
    options.addProperty("binary", "/usr/bin/chromium");
    options.add("args", arguments);
    var always = new JsonObject();
    always.addProperty("browserName", "chrome");
    always.add("goog:chromeOptions", options);
    return object("capabilities", object("alwaysMatch", always));
  }

  void go(String address) throws IOException, InterruptedException {
    var to = new JsonObject();
    to.addProperty("url", address);
    send("POST", "url", to);
  }

  /** Runs a script in the page; what it returns comes back. */
  JsonElement script(String script, String... arguments) throws IOException, InterruptedException {
    var given = new JsonArray();
    List.of(arguments).forEach(given::add);
    var content = object("args", given);
    content.addProperty("script", script);
    return send("POST", "execute/sync", content);
  }

  /** Writes a picture of the window. */
  void picture(Path file) throws IOException, InterruptedException {
    write(file, send("GET", "screenshot", null));
  }

  /** Writes a picture of one element, which a script finds. */
  void picture(Path file, String finder) throws IOException, InterruptedException {
    var element = script(finder).getAsJsonObject().get(ELEMENT).getAsString();
    write(file, send("GET", "element/" + element + "/screenshot", null));
  }

  private static void write(Path file, JsonElement png) throws IOException {
    Files.createDirectories(file.getParent());
    Files.write(file, Base64.getMimeDecoder().decode(png.getAsString()));
  }

  private JsonElement send(String method, String command, JsonObject content)
      throws IOException, InterruptedException {
    var body =
        content == null
            ? HttpRequest.BodyPublishers.noBody()
            : HttpRequest.BodyPublishers.ofString(content.toString(), StandardCharsets.UTF_8);
    var request =
        HttpRequest.newBuilder(address(command))
            .timeout(PATIENCE)
            .header("Content-Type", "application/json; charset=utf-8")
            .method(method, body)
            .build();
    var answer =
        http.send(request, HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8)).body();
    var value = JsonParser.parseString(answer).getAsJsonObject().get("value");
    if (value.isJsonObject() && value.getAsJsonObject().has("error")) {
      throw new IOException(command + ": " + value);
    }
    return value;
  }

  private URI address(String command) {
    return command.isEmpty() ? session : URI.create(session + "/" + command);
  }

  private static JsonObject object(String name, JsonElement value) {
    var object = new JsonObject();
    object.add(name, value);
    return object;
  }

  @Override
  public void close() throws IOException {
    try {
      send("DELETE", "", null);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } finally {
      LocalPort.end(driver);
    }
  }
}
