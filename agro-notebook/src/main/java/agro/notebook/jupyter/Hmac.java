package agro.notebook.jupyter;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.List;

/**
 * The keyed hash of RFC 2104 over one of the JDK's digests. The JDK's own {@code Mac} gives the
 * same values but brings in the whole of its cryptography first: about 70 ms at the start of a
 * kernel.
 */
final class Hmac {

  private static final byte INNER = 0x36;
  private static final byte OUTER = 0x5c;

  private final MessageDigest inner;
  private final MessageDigest outer;

  /**
   * A keyed hash.
   *
   * @param digest name of the digest as the JDK knows it, such as {@code SHA-256}
   * @param key the key, of any length
   * @throws NoSuchAlgorithmException when the JDK does not know the digest, or its blocks are not
   *     known here
   */
  Hmac(String digest, byte[] key) throws NoSuchAlgorithmException {
    inner = MessageDigest.getInstance(digest);
    outer = MessageDigest.getInstance(digest);
    var block = Arrays.copyOf(key, blockLength(digest));
    if (key.length > block.length) {
      block = Arrays.copyOf(inner.digest(key), block.length);
    }
    inner.update(padded(block, INNER));
    outer.update(padded(block, OUTER));
  }

  /** The block length B of RFC 2104, which the JDK does not tell. */
  private static int blockLength(String digest) throws NoSuchAlgorithmException {
    return switch (digest) {
      case "MD5", "SHA-1", "SHA-224", "SHA-256" -> 64;
      case "SHA-384", "SHA-512", "SHA-512/224", "SHA-512/256" -> 128;
      case "SHA3-224" -> 144;
      case "SHA3-256" -> 136;
      case "SHA3-384" -> 104;
      case "SHA3-512" -> 72;
      default -> throw new NoSuchAlgorithmException(digest);
    };
  }

  private static byte[] padded(byte[] block, byte pad) {
    var padded = block.clone();
    for (var at = 0; at < padded.length; at++) {
      padded[at] ^= pad;
    }
    return padded;
  }

  /** The hash of parts, one after the other. Safe for use by several threads. */
  byte[] of(List<byte[]> parts) {
    var first = copy(inner);
    parts.forEach(first::update);
    var second = copy(outer);
    second.update(first.digest());
    return second.digest();
  }

  private static MessageDigest copy(MessageDigest keyed) {
    try {
      return (MessageDigest) keyed.clone();
    } catch (CloneNotSupportedException e) {
      throw new IllegalStateException("the JDK's digests can be copied", e);
    }
  }
}
