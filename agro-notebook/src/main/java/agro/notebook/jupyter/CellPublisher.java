package agro.notebook.jupyter;

import agro.notebook.display.MimeBundle;
import agro.notebook.kernel.OutputSink;
import agro.notebook.kernel.StandardStream;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.JsonPrimitive;
import java.util.concurrent.CancellationException;

/** Publishes what one cell prints and shows, also after its end, as outputs of its request. */
final class CellPublisher implements OutputSink {

  /** What takes something away: front ends keep what was there when an update has no format. */
  private static final MimeBundle NOTHING =
      MimeBundle.of(MimeBundle.HTML, "").with(MimeBundle.TEXT, "");

  private final OutputQueue queue;
  private final JsonObject parent;

  CellPublisher(OutputQueue queue, JsonObject parent) {
    this.queue = queue;
    this.parent = parent;
  }

  @Override
  public void text(StandardStream stream, String text) {
    try {
      queue.addText(parent, stream, text);
    } catch (InterruptedException e) {
      throw interrupted(e);
    }
  }

  @Override
  public void show(String id, MimeBundle bundle) {
    add("display_data", shown(id, bundle), size(bundle));
  }

  @Override
  public void update(String id, MimeBundle bundle) {
    var instead = bundle.isEmpty() ? NOTHING : bundle;
    add("update_display_data", shown(id, instead), size(instead));
  }

  @Override
  public void clear(boolean wait) {
    add("clear_output", Json.with("wait", new JsonPrimitive(wait)), 16);
  }

  private void add(String type, JsonObject content, long size) {
    try {
      queue.addOutput(Publication.output(type, parent, content, size));
    } catch (InterruptedException e) {
      throw interrupted(e);
    }
  }

  private static CancellationException interrupted(InterruptedException e) {
    Thread.currentThread().interrupt();
    var ended = new CancellationException("interrupted while the front end did not read");
    ended.initCause(e);
    return ended;
  }

  private static JsonObject shown(String id, MimeBundle bundle) {
    var content = new JsonObject();
    content.add("data", data(bundle));
    content.add("metadata", new JsonObject());
    content.add("transient", Json.with("display_id", new JsonPrimitive(id)));
    return content;
  }

  /** A bundle as the protocol has it: JSON formats as JSON, all others as text. */
  static JsonObject data(MimeBundle bundle) {
    var data = new JsonObject();
    bundle.data().forEach((type, content) -> data.add(type, value(type, content)));
    return data;
  }

  private static JsonElement value(String type, String content) {
    if (type.equals(MimeBundle.JSON) || type.endsWith("+json")) {
      try {
        return Json.parse(content);
      } catch (JsonParseException notJson) {
        return new JsonPrimitive(content);
      }
    }
    return new JsonPrimitive(content);
  }

  static long size(MimeBundle bundle) {
    return bundle.data().values().stream().mapToLong(String::length).sum();
  }
}
