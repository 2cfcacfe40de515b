package agro.notebook.install;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/** A short name for content: the same content has the same one, another has another. */
final class Fingerprint {

  private static final int DIGITS = 16;
  private static final int PIECE = 1 << 16;

  private Fingerprint() {}

  static String of(Path file) {
    var digest = sha256();
    try (var content = Files.newInputStream(file)) {
      var piece = new byte[PIECE];
      for (var n = content.read(piece); n >= 0; n = content.read(piece)) {
        digest.update(piece, 0, n);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(file + " could not be read", e);
    }
    return digits(digest);
  }

  static String of(List<String> texts) {
    var digest = sha256();
    for (var text : texts) {
      digest.update(text.getBytes(StandardCharsets.UTF_8));
      digest.update((byte) 0);
    }
    return digits(digest);
  }

  private static String digits(MessageDigest digest) {
    return HexFormat.of().formatHex(digest.digest()).substring(0, DIGITS);
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
