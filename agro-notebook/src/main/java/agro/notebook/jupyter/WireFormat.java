package agro.notebook.jupyter;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;

/** Turns messages into frames and frames into messages. */
final class WireFormat {

  /** The version of the protocol that this kernel speaks. */
  static final String PROTOCOL = "5.4";

  private static final byte[] DELIMITER = "<IDS|MSG>".getBytes(StandardCharsets.US_ASCII);
  private static final int PARTS = 4;

  private final MessageSigner signer;
  private final String session;
  private final AtomicLong sent = new AtomicLong();
  private final SeenSignatures seen = new SeenSignatures();

  /**
   * A format.
   *
   * @param signer signs and checks
   * @param session name of this run of the kernel
   */
  WireFormat(MessageSigner signer, String session) {
    this.signer = signer;
    this.session = session;
  }

  /** A new header of this kernel. */
  JsonObject header(String type) {
    var header = new JsonObject();
    header.addProperty("msg_id", session + "_" + sent.incrementAndGet());
    header.addProperty("session", session);
    header.addProperty("username", "kernel");
    header.addProperty("date", date(Instant.now()));
    header.addProperty("msg_type", type);
    header.addProperty("version", PROTOCOL);
    return header;
  }

  /**
   * A date as front ends read it: seconds with at most six decimals. Written by the local date-time
   * itself, since a formatter costs 10 ms at the start; that leaves out a fraction that is zero,
   * and so the fraction never is.
   */
  static String date(Instant now) {
    var micros = Math.max(1, now.getNano() / 1_000);
    return LocalDateTime.ofEpochSecond(now.getEpochSecond(), micros * 1_000, ZoneOffset.UTC) + "Z";
  }

  /** The frames of a message, signed. */
  List<byte[]> frames(Message message) {
    var parts =
        List.of(
            bytes(message.header()),
            bytes(message.parent()),
            bytes(message.metadata()),
            bytes(message.content()));
    var frames = new ArrayList<>(message.route());
    frames.add(DELIMITER);
    frames.add(signer.sign(parts));
    frames.addAll(parts);
    frames.addAll(message.buffers());
    return frames;
  }

  /**
   * The message in frames.
   *
   * @param frames everything that was received at once
   * @return the message
   * @throws MalformedMessage when it is not signed by somebody who knows the key, not of the right
   *     form, or was here before
   */
  Message message(List<byte[]> frames) throws MalformedMessage {
    var at = delimiter(frames);
    if (frames.size() < at + 2 + PARTS) {
      throw new MalformedMessage("a message of " + frames.size() + " frames");
    }
    var signature = frames.get(at + 1);
    var first = at + 2;
    var parts = frames.subList(first, first + PARTS);
    if (!signer.accepts(signature, parts)) {
      throw new MalformedMessage("a message that is not signed with the key of this kernel");
    }
    var message =
        new Message(
            frames.subList(0, at),
            json(parts.get(0)),
            json(parts.get(1)),
            json(parts.get(2)),
            json(parts.get(3)),
            frames.subList(first + PARTS, frames.size()));
    // Last of all, so that a message which could not be read for want of memory may be read again.
    if (signer.signs() && !seen.isNew(signature)) {
      throw new MalformedMessage("a message that was here before");
    }
    return message;
  }

  private static int delimiter(List<byte[]> frames) throws MalformedMessage {
    for (var at = 0; at < frames.size(); at++) {
      if (Arrays.equals(frames.get(at), DELIMITER)) {
        return at;
      }
    }
    throw new MalformedMessage("frames without the delimiter of messages");
  }

  private static JsonObject json(byte[] part) throws MalformedMessage {
    try {
      var text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(part)).toString();
      return Json.object(text);
    } catch (CharacterCodingException e) {
      throw new MalformedMessage("a message that is not UTF-8");
    } catch (JsonParseException e) {
      throw new MalformedMessage("a message that is not made of JSON objects");
    }
  }

  private static byte[] bytes(JsonElement part) {
    return part.toString().getBytes(StandardCharsets.UTF_8);
  }
}
