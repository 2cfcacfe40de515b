package agro.notebook.jupyter;

import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * What a front end sent over a {@link Comm}.
 *
 * @param data texts, {@code Long}s and {@code Double}s, booleans, nulls, and maps and lists of them
 * @param metadata anything beside the data
 * @param buffers binary parts
 */
public record CommMessage(
    Map<String, Object> data, Map<String, Object> metadata, List<byte[]> buffers) {

  /** Refuses nulls. */
  public CommMessage {
    Objects.requireNonNull(data, "data");
    Objects.requireNonNull(metadata, "metadata");
    buffers = List.copyOf(buffers);
  }

  static CommMessage of(Message message) {
    return new CommMessage(
        JsonValues.map(Json.child(message.content(), "data")),
        JsonValues.map(message.metadata()),
        message.buffers());
  }
}
