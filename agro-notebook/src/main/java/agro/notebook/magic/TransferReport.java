package agro.notebook.magic;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.eclipse.aether.AbstractRepositoryListener;
import org.eclipse.aether.RepositoryEvent;
import org.eclipse.aether.RepositoryListener;
import org.eclipse.aether.artifact.Artifact;
import org.eclipse.aether.transfer.AbstractTransferListener;
import org.eclipse.aether.transfer.TransferCancelledException;
import org.eclipse.aether.transfer.TransferEvent;

/**
 * Notes what is downloaded, tells of large files when they begin, and ends the transfer when the
 * cell was interrupted.
 */
final class TransferReport extends AbstractTransferListener {

  private static final long LARGE = 1_000_000;

  private final Thread worker;
  private final Map<String, String> sources = new ConcurrentHashMap<>();
  private volatile boolean cancelled;

  /**
   * A report.
   *
   * @param worker the thread whose interruption ends the transfers
   */
  TransferReport(Thread worker) {
    this.worker = worker;
  }

  /**
   * Where an artifact was downloaded from.
   *
   * @param artifact the artifact
   * @return the repository and the size, or empty when it was not downloaded
   */
  Optional<String> source(Artifact artifact) {
    return Optional.ofNullable(sources.get(artifact.toString()));
  }

  @Override
  public void transferInitiated(TransferEvent event) throws TransferCancelledException {
    goOn();
  }

  @Override
  public void transferStarted(TransferEvent event) throws TransferCancelledException {
    goOn();
    var resource = event.getResource();
    if (resource.getContentLength() >= LARGE) {
      var name = resource.getResourceName();
      System.out.println(
          "Downloading "
              + name.substring(name.lastIndexOf('/') + 1)
              + ", "
              + size(resource.getContentLength()));
    }
  }

  @Override
  public void transferProgressed(TransferEvent event) throws TransferCancelledException {
    goOn();
  }

  private void goOn() throws TransferCancelledException {
    if (worker.isInterrupted()) {
      cancelled = true;
    }
    if (cancelled) {
      throw new TransferCancelledException("the cell was interrupted");
    }
  }

  /** What is to be told of each artifact. */
  RepositoryListener artifacts() {
    return new AbstractRepositoryListener() {
      @Override
      public void artifactDownloaded(RepositoryEvent event) {
        if (event.getException() == null && event.getFile() != null) {
          sources.put(
              event.getArtifact().toString(),
              event.getRepository().getId() + ", " + size(event.getFile().length()));
        }
      }
    };
  }

  /**
   * A size for people.
   *
   * @param bytes number of bytes
   * @return kilobytes below a megabyte, else megabytes
   */
  static String size(long bytes) {
    return bytes < LARGE
        ? String.format(Locale.ROOT, "%d KB", Math.max(1, Math.round(bytes / 1e3)))
        : String.format(Locale.ROOT, "%.1f MB", bytes / 1e6);
  }
}
