package agro.notebook.jupyter;

import com.google.gson.JsonObject;
import java.util.List;
import java.util.Objects;

/**
 * A message of the Jupyter protocol.
 *
 * @param route to whom it goes or from whom it came: the identities before the delimiter
 * @param header who it is: {@code msg_id}, {@code msg_type} and others
 * @param parent the header of the message that caused it; empty when none did
 * @param metadata anything beside the content
 * @param content what it says
 * @param buffers binary parts
 */
record Message(
    List<byte[]> route,
    JsonObject header,
    JsonObject parent,
    JsonObject metadata,
    JsonObject content,
    List<byte[]> buffers) {

  Message {
    route = List.copyOf(route);
    Objects.requireNonNull(header, "header");
    Objects.requireNonNull(parent, "parent");
    Objects.requireNonNull(metadata, "metadata");
    Objects.requireNonNull(content, "content");
    buffers = List.copyOf(buffers);
  }

  String type() {
    return Json.text(header, "msg_type", "");
  }

  String id() {
    return Json.text(header, "msg_id", "");
  }
}
