package agro.notebook.jupyter;

import agro.notebook.jupyter.ConnectionFile.Signature;
import agro.report.InputProblem;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Signs messages and checks signatures, in constant time. Safe for use by several threads. */
final class MessageSigner {

  private static final String PREFIX = "hmac-";
  private static final byte[] DIGITS = "0123456789abcdef".getBytes(StandardCharsets.US_ASCII);

  private final Optional<Hmac> hash;

  private MessageSigner(Optional<Hmac> hash) {
    this.hash = hash;
  }

  /**
   * The signer that a connection file asks for.
   *
   * @param signature scheme and key; with an empty key nothing is signed, as the protocol has it
   * @return the signer
   * @throws InputProblem when the scheme is not known here
   */
  static MessageSigner of(Signature signature) {
    if (signature.key().isEmpty()) {
      return new MessageSigner(Optional.empty());
    }
    try {
      var key = signature.key().getBytes(StandardCharsets.UTF_8);
      return new MessageSigner(Optional.of(new Hmac(digest(signature.scheme()), key)));
    } catch (NoSuchAlgorithmException e) {
      throw InputProblem.of("the signature scheme is \"" + signature.scheme() + "\"")
          .expected("hmac-sha256, or hmac- with another digest of this Java, such as hmac-sha512")
          .because("messages that are not signed right are dropped")
          .mend("set the front end's signature_scheme to hmac-sha256");
    }
  }

  /** From {@code hmac-sha256} to {@code SHA-256}. */
  private static String digest(String scheme) throws NoSuchAlgorithmException {
    var name = scheme.toLowerCase(Locale.ROOT).replace('_', '-');
    if (!name.startsWith(PREFIX)) {
      throw new NoSuchAlgorithmException(scheme);
    }
    var digest = name.substring(PREFIX.length()).toUpperCase(Locale.ROOT);
    return digest.matches("SHA[0-9]+") ? "SHA-" + digest.substring("SHA".length()) : digest;
  }

  boolean signs() {
    return hash.isPresent();
  }

  /**
   * The signature of the four JSON parts of a message.
   *
   * @param parts header, parent header, metadata and content
   * @return hexadecimal digits; none when messages are not signed
   */
  byte[] sign(List<byte[]> parts) {
    return hash.map(keyed -> hexadecimal(keyed.of(parts))).orElseGet(() -> new byte[0]);
  }

  private static byte[] hexadecimal(byte[] bytes) {
    var text = new byte[2 * bytes.length];
    for (var at = 0; at < bytes.length; at++) {
      text[2 * at] = DIGITS[(bytes[at] >> 4) & 0xf];
      text[2 * at + 1] = DIGITS[bytes[at] & 0xf];
    }
    return text;
  }

  /** Whether a signature is the right one, told in a time that does not depend on how wrong. */
  boolean accepts(byte[] signature, List<byte[]> parts) {
    return hash.isEmpty() || MessageDigest.isEqual(sign(parts), signature);
  }
}
