package agro.notebook.jupyter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.notebook.jupyter.ConnectionFile.Signature;
import agro.report.InputProblem;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against the test cases of RFC 4231 and against the JDK's own {@code Mac}. */
class MessageSignerTest {

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static String hash(String digest, byte[] key, byte[]... parts)
      throws GeneralSecurityException {
    return HexFormat.of().formatHex(new Hmac(digest, key).of(List.of(parts)));
  }

  @Test
  void hashesAsRfc4231() throws GeneralSecurityException {
    var longKey = new byte[131];
    Arrays.fill(longKey, (byte) 0xaa);

    // Test case 2, its data in two parts.
    assertThat(hash("SHA-256", bytes("Jefe"), bytes("what do ya want "), bytes("for nothing?")))
        .isEqualTo("5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843");
    // Test case 6: a key longer than a block.
    assertThat(
            hash(
                "SHA-256",
                longKey,
                bytes("Test Using Larger Than Block-Size Key - Hash Key First")))
        .isEqualTo("60e431591ee0b67f0d8a26aacbf5b77f8e0bc6213728c5140546040f0ee37f54");
  }

  @ParameterizedTest
  @CsvSource({
    "hmac-md5, HmacMD5",
    "hmac-sha1, HmacSHA1",
    "hmac-sha224, HmacSHA224",
    "hmac-sha256, HmacSHA256",
    "HMAC-SHA384, HmacSHA384",
    "hmac-sha512, HmacSHA512",
    "hmac-sha3_256, HmacSHA3-256",
    "hmac-sha3-512, HmacSHA3-512"
  })
  void signsAsTheJdkDoes(String scheme, String algorithm) throws GeneralSecurityException {
    var key = "k\u00e9y".repeat(60);
    var mac = Mac.getInstance(algorithm);
    mac.init(new SecretKeySpec(bytes(key), "key"));
    var expected = HexFormat.of().formatHex(mac.doFinal(bytes("header{}content")));

    var signer = MessageSigner.of(new Signature(scheme, key));
    var parts = List.of(bytes("header"), bytes("{}"), bytes("content"));
    assertThat(signer.sign(parts)).asString(StandardCharsets.US_ASCII).isEqualTo(expected);
    assertThat(signer.accepts(bytes(expected), parts)).isTrue();
    assertThat(signer.accepts(bytes(expected), List.of(bytes("other")))).isFalse();
    assertThat(signer.accepts(new byte[0], parts)).isFalse();
  }

  @Test
  void anEmptyKeySignsNothing() {
    var signer = MessageSigner.of(new Signature("hmac-sha256", ""));

    assertThat(signer.signs()).isFalse();
    assertThat(signer.sign(List.of(bytes("a")))).isEmpty();
    assertThat(signer.accepts(bytes("anything"), List.of(bytes("a")))).isTrue();
  }

  @Test
  void anUnknownSchemeIsRefused() {
    for (var scheme : List.of("sha256", "hmac-", "hmac-crc32", "rsa-sha256")) {
      assertThatThrownBy(() -> MessageSigner.of(new Signature(scheme, "key")))
          .isInstanceOf(InputProblem.class)
          .hasMessageContaining(scheme)
          .hasMessageContaining("hmac-sha256");
    }
  }
}
