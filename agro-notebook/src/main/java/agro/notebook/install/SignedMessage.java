package agro.notebook.install;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.zeromq.ZMQ;

/**
 * A message of the Jupyter messaging protocol 5.4, as a client sends and reads it (chapter "The
 * wire protocol" of the documentation of jupyter_client).
 *
 * @param type the type in its header
 * @param id the id in its header
 * @param parent the id of the message it answers; empty for a request
 * @param content its content
 */
record SignedMessage(String type, String id, String parent, JsonObject content) {

  private static final byte[] DELIMITER = "<IDS|MSG>".getBytes(StandardCharsets.US_ASCII);
  private static final int PARTS = 4;

  static SignedMessage request(String type, JsonObject content) {
    return new SignedMessage(type, UUID.randomUUID().toString(), "", content);
  }

  void send(ZMQ.Socket socket, String session, byte[] key) {
    var header = new JsonObject();
    header.addProperty("msg_id", id);
    header.addProperty("session", session);
    header.addProperty("username", "agro");
    header.addProperty("date", Instant.now().truncatedTo(ChronoUnit.MICROS).toString());
    header.addProperty("msg_type", type);
    header.addProperty("version", "5.4");
    var parts = List.of(utf8(header.toString()), utf8("{}"), utf8("{}"), utf8(content.toString()));
    socket.sendMore(DELIMITER);
    socket.sendMore(utf8(signature(parts, key)));
    for (var i = 0; i < PARTS; i++) {
      socket.send(parts.get(i), i < PARTS - 1 ? ZMQ.SNDMORE : 0);
    }
  }

  /** The message in the frames of one transmission, unless it is none or wrongly signed. */
  static Optional<SignedMessage> read(List<byte[]> frames, byte[] key) {
    var at = 0;
    while (at < frames.size() && !MessageDigest.isEqual(frames.get(at), DELIMITER)) {
      at++;
    }
    if (frames.size() < at + 2 + PARTS) {
      return Optional.empty();
    }
    var parts = frames.subList(at + 2, at + 2 + PARTS);
    if (!MessageDigest.isEqual(frames.get(at + 1), utf8(signature(parts, key)))) {
      return Optional.empty();
    }
    var header = json(parts.get(0));
    var parent = json(parts.get(1));
    return Optional.of(
        new SignedMessage(
            header.get("msg_type").getAsString(),
            header.get("msg_id").getAsString(),
            parent.has("msg_id") ? parent.get("msg_id").getAsString() : "",
            json(parts.get(3))));
  }

  private static String signature(List<byte[]> parts, byte[] key) {
    try {
      var mac = Mac.getInstance("HmacSHA256");
      mac.init(new SecretKeySpec(key, "HmacSHA256"));
      parts.forEach(mac::update);
      return HexFormat.of().formatHex(mac.doFinal());
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("every Java platform has HmacSHA256", e);
    }
  }

  private static JsonObject json(byte[] part) {
    return JsonParser.parseString(new String(part, StandardCharsets.UTF_8)).getAsJsonObject();
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
