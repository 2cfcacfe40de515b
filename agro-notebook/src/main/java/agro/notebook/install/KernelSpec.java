package agro.notebook.install;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import java.util.List;
import java.util.Optional;
import java.util.stream.StreamSupport;

/**
 * The file {@code kernel.json}, by which Jupyter knows a kernel (chapter "Making kernels for
 * Jupyter", documentation of jupyter_client).
 *
 * @param displayName the name that people choose from
 * @param arguments the command line, with {@code {connection_file}} in it
 * @param origin who made the file; empty when it is not ours
 */
public record KernelSpec(String displayName, List<String> arguments, Optional<Origin> origin) {

  private static final String OURS = "agro-notebook";
  private static final Gson JSON =
      new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create();

  /**
   * What the installation writes down about itself.
   *
   * @param version the version of the program
   * @param javaVersion the version of the JDK that it was installed with
   */
  public record Origin(String version, String javaVersion) {}

  /** Copies the arguments. */
  public KernelSpec {
    arguments = List.copyOf(arguments);
  }

  /**
   * The text of the file.
   *
   * @return JSON
   */
  public String toJson() {
    var spec = new JsonObject();
    var argv = new JsonArray();
    arguments.forEach(argv::add);
    spec.add("argv", argv);
    spec.addProperty("display_name", displayName);
    spec.addProperty("language", "java");
    spec.addProperty("interrupt_mode", "message");
    origin.ifPresent(
        made -> {
          var marker = new JsonObject();
          marker.addProperty("version", made.version());
          marker.addProperty("java_version", made.javaVersion());
          var metadata = new JsonObject();
          metadata.add(OURS, marker);
          spec.add("metadata", metadata);
        });
    return JSON.toJson(spec) + "\n";
  }

  /**
   * Reads the text of a file.
   *
   * @param text JSON
   * @return the spec, or nothing when the text is no kernel spec
   */
  public static Optional<KernelSpec> parse(String text) {
    try {
      var spec = JsonParser.parseString(text).getAsJsonObject();
      var arguments =
          StreamSupport.stream(spec.getAsJsonArray("argv").spliterator(), false)
              .map(JsonElement::getAsString)
              .toList();
      var name = spec.has("display_name") ? spec.get("display_name").getAsString() : "";
      return Optional.of(new KernelSpec(name, arguments, originOf(spec)));
    } catch (JsonParseException
        | IllegalStateException
        | UnsupportedOperationException
        | ClassCastException
        | NullPointerException notOne) {
      return Optional.empty();
    }
  }

  private static Optional<Origin> originOf(JsonObject spec) {
    var metadata = spec.getAsJsonObject("metadata");
    if (metadata == null || !metadata.has(OURS)) {
      return Optional.empty();
    }
    var marker = metadata.getAsJsonObject(OURS);
    return Optional.of(
        new Origin(marker.get("version").getAsString(), marker.get("java_version").getAsString()));
  }
}
