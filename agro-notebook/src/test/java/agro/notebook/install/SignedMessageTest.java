package agro.notebook.install;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Frames as the chapter "The wire protocol" lays them out. The signature was computed with Python:
 * {@code hmac.new(b"key", b'{"msg_id":"1","msg_type":"status"}' + b'{"msg_id":"7"}' + b'{}' +
 * b'{"execution_state":"idle"}', "sha256").hexdigest()}.
 */
class SignedMessageTest {

  private static final String SIGNATURE =
      "2769ed5060b458365090331659fcdc3b88a71965d77a8899d7970d55cd804e68";
  private static final byte[] KEY = utf8("key");

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static List<byte[]> frames(String signature) {
    return Stream.of(
            "kernel.status",
            "<IDS|MSG>",
            signature,
            "{\"msg_id\":\"1\",\"msg_type\":\"status\"}",
            "{\"msg_id\":\"7\"}",
            "{}",
            "{\"execution_state\":\"idle\"}")
        .map(SignedMessageTest::utf8)
        .toList();
  }

  @Test
  void aSignedMessageIsRead() {
    var message = SignedMessage.read(frames(SIGNATURE), KEY).orElseThrow();
    assertThat(message.type()).isEqualTo("status");
    assertThat(message.parent()).isEqualTo("7");
    assertThat(message.content().get("execution_state").getAsString()).isEqualTo("idle");
  }

  @Test
  void aWrongSignatureIsRefused() {
    assertThat(SignedMessage.read(frames(SIGNATURE.replace('a', 'b')), KEY)).isEmpty();
    assertThat(SignedMessage.read(frames(""), KEY)).isEmpty();
    assertThat(SignedMessage.read(frames(SIGNATURE), utf8("other"))).isEmpty();
  }

  @Test
  void partsOfAMessageAreNone() {
    var all = frames(SIGNATURE);
    for (var n = 0; n < all.size(); n++) {
      assertThat(SignedMessage.read(new ArrayList<>(all.subList(0, n)), KEY)).isEmpty();
    }
  }
}
