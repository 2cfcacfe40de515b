package agro.notebook.jupyter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.notebook.jupyter.ConnectionFile.Signature;
import com.google.gson.JsonObject;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class WireFormatTest {

  private final MessageSigner signer = MessageSigner.of(new Signature("hmac-sha256", "secret"));
  private final WireFormat format = new WireFormat(signer, "session");

  private Message sample() {
    var content = new JsonObject();
    content.addProperty("code", "\"\u00e4\uD83E\uDD8B\"");
    return new Message(
        List.of(new byte[] {0, 1}, new byte[] {2}),
        format.header("execute_request"),
        new JsonObject(),
        new JsonObject(),
        content,
        List.of(new byte[] {7, 8, 9}));
  }

  @Test
  void readsWhatItWrites() throws MalformedMessage {
    var sent = sample();
    var read = format.message(format.frames(sent));

    assertThat(read.type()).isEqualTo("execute_request");
    assertThat(read.id()).isEqualTo(sent.id()).isNotEmpty();
    assertThat(read.content()).isEqualTo(sent.content());
    assertThat(read.route()).containsExactly(new byte[] {0, 1}, new byte[] {2});
    assertThat(read.buffers()).containsExactly(new byte[] {7, 8, 9});
  }

  @Test
  void headersAreOfTheProtocol() {
    var header = format.header("status");

    assertThat(header.keySet())
        .containsExactlyInAnyOrder("msg_id", "session", "username", "date", "msg_type", "version");
    assertThat(format.header("status").get("msg_id")).isNotEqualTo(header.get("msg_id"));
  }

  @Test
  void datesHaveSecondsAndAtMostSixDecimals() {
    assertThat(WireFormat.date(Instant.parse("2026-06-16T08:00:00Z")))
        .isEqualTo("2026-06-16T08:00:00.000001Z");
    assertThat(WireFormat.date(Instant.parse("2026-06-16T08:05:09.123456789Z")))
        .isEqualTo("2026-06-16T08:05:09.123456Z");
  }

  @Test
  void refusesWhatIsNotSignedRight() {
    var frames = new ArrayList<>(format.frames(sample()));
    frames.set(6, "{\"code\":\"1\"}".getBytes(StandardCharsets.UTF_8));
    refuses(frames, "not signed");

    var unsigned = new ArrayList<>(format.frames(sample()));
    unsigned.set(3, new byte[0]);
    refuses(unsigned, "not signed");
  }

  @Test
  void refusesWhatIsNoMessage() {
    refuses(List.of(), "delimiter");
    refuses(List.of(new byte[0]), "delimiter");
    var frames = format.frames(sample());
    refuses(frames.subList(0, 7), "frames");
    refuses(signed("[]", "{}", "{}", "{}"), "JSON");
    refuses(signed("{}", "{} {}", "{}", "{}"), "JSON");
    refuses(signed("{}", "{}", "", "{}"), "JSON");
    refuses(signed("{}", "{}", "{}", "{\"a\": NaN}"), "JSON");
    refuses(signed("{}", "{}", "{}", "[".repeat(100_000)), "JSON");
  }

  @Test
  void refusesWhatIsNotUtf8() {
    var parts = List.of(new byte[] {'{', '"', (byte) 0xff, '"', ':', '1', '}'}, b(), b(), b());
    refuses(frames(parts), "UTF-8");
  }

  @Test
  void refusesAMessageThatWasHereBefore() throws MalformedMessage {
    var frames = format.frames(sample());
    format.message(frames);
    refuses(frames, "before");
  }

  @Test
  void withoutAKeyTheSameMessageMayComeTwice() throws MalformedMessage {
    var open = new WireFormat(MessageSigner.of(new Signature("hmac-sha256", "")), "s");
    var frames = open.frames(sample());
    open.message(frames);
    assertThat(open.message(frames).type()).isEqualTo("execute_request");
  }

  private static byte[] b() {
    return new byte[] {'{', '}'};
  }

  private List<byte[]> signed(String... parts) {
    var bytes = new ArrayList<byte[]>();
    for (var part : parts) {
      bytes.add(part.getBytes(StandardCharsets.UTF_8));
    }
    return frames(bytes);
  }

  private List<byte[]> frames(List<byte[]> parts) {
    var frames = new ArrayList<byte[]>();
    frames.add("<IDS|MSG>".getBytes(StandardCharsets.US_ASCII));
    frames.add(signer.sign(parts));
    frames.addAll(parts);
    return frames;
  }

  private void refuses(List<byte[]> frames, String why) {
    assertThatThrownBy(() -> format.message(frames))
        .isInstanceOf(MalformedMessage.class)
        .hasMessageContaining(why);
  }
}
