package agro.notebook.display;

import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** The formats of pictures that every browser shows. */
enum PictureFormat {
  PNG("image/png", 0x89, 'P', 'N', 'G'),
  JPEG("image/jpeg", 0xFF, 0xD8, 0xFF),
  GIF("image/gif", 'G', 'I', 'F', '8'),
  SVG("image/svg+xml");

  private static final int LOOKED_AT = 4_096;

  private final String mediaType;
  private final int[] beginning;

  PictureFormat(String mediaType, int... beginning) {
    this.mediaType = mediaType;
    this.beginning = beginning;
  }

  String mediaType() {
    return mediaType;
  }

  /** The format that a file has, seen from its first bytes. */
  static Optional<PictureFormat> of(byte[] file) {
    for (var format : values()) {
      if (format.fits(file)) {
        return Optional.of(format);
      }
    }
    return Optional.empty();
  }

  private boolean fits(byte[] file) {
    if (this == SVG) {
      var start = new String(file, 0, Math.min(LOOKED_AT, file.length), StandardCharsets.UTF_8);
      return start.contains("<svg") || start.contains(":svg");
    }
    for (var at = 0; at < beginning.length; at++) {
      if (at >= file.length || (file[at] & 0xFF) != beginning[at]) {
        return false;
      }
    }
    return true;
  }
}
