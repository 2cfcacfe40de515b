package agro.notebook.jupyter;

import java.nio.ByteBuffer;
import java.util.LinkedHashSet;
import java.util.Set;

/** Remembers the latest signatures, so that a message which is sent again does nothing. */
final class SeenSignatures {

  private static final int LIMIT = 4_096;

  private final Set<ByteBuffer> latest = new LinkedHashSet<>();

  /** Whether a signature was not seen lately. It counts as seen from now on. */
  synchronized boolean isNew(byte[] signature) {
    if (!latest.add(ByteBuffer.wrap(signature))) {
      return false;
    }
    if (latest.size() > LIMIT) {
      var oldest = latest.iterator();
      oldest.next();
      oldest.remove();
    }
    return true;
  }
}
