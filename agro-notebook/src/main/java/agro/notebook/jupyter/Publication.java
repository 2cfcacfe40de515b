package agro.notebook.jupyter;

import com.google.gson.JsonObject;
import java.util.List;
import java.util.Objects;

/**
 * A message that waits to be sent to all front ends, or as a question to one of them.
 *
 * @param to where it goes
 * @param route the identities of the front end that is asked; empty when it goes to all
 * @param type the type of the message
 * @param parent the header of the request that caused it
 * @param body what it says
 * @param size about how many bytes it holds
 */
record Publication(
    Destination to, List<byte[]> route, String type, JsonObject parent, Body body, long size) {

  private static final long SMALL = 512;

  /** Where a publication goes. */
  enum Destination {
    /** To everybody who listens to the outputs. */
    OUTPUTS,
    /** To the one who can answer. */
    QUESTIONS
  }

  /**
   * What a message says.
   *
   * @param metadata beside the content
   * @param content the content
   * @param buffers binary parts
   */
  record Body(JsonObject metadata, JsonObject content, List<byte[]> buffers) {
    Body {
      Objects.requireNonNull(metadata, "metadata");
      Objects.requireNonNull(content, "content");
      buffers = List.copyOf(buffers);
    }

    static Body of(JsonObject content) {
      return new Body(new JsonObject(), content, List.of());
    }
  }

  Publication {
    Objects.requireNonNull(to, "to");
    route = List.copyOf(route);
    Objects.requireNonNull(type, "type");
    Objects.requireNonNull(parent, "parent");
    Objects.requireNonNull(body, "body");
  }

  /** An output of known size. */
  static Publication output(String type, JsonObject parent, JsonObject content, long size) {
    return new Publication(
        Destination.OUTPUTS, List.of(), type, parent, Body.of(content), SMALL + size);
  }

  /** A question to one front end. */
  static Publication question(Message cell, JsonObject content) {
    return new Publication(
        Destination.QUESTIONS,
        cell.route(),
        "input_request",
        cell.header(),
        Body.of(content),
        SMALL);
  }
}
