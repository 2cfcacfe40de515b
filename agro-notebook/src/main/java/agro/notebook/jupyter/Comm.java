package agro.notebook.jupyter;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;

/** A line between the notebook's front end and the code of cells, open in both directions. */
public final class Comm {

  private final CommRegistry registry;
  private final String id;
  private final String target;
  private volatile Consumer<CommMessage> onMessage = message -> {};
  private volatile Consumer<CommMessage> onClose = message -> {};

  Comm(CommRegistry registry, String id, String target) {
    this.registry = registry;
    this.id = id;
    this.target = target;
  }

  /**
   * The name that both sides know it by.
   *
   * @return the id
   */
  public String id() {
    return id;
  }

  /**
   * The name of what it was opened for.
   *
   * @return the name of the target
   */
  public String target() {
    return target;
  }

  /**
   * Whether neither side has closed it.
   *
   * @return true while it is open
   */
  public boolean isOpen() {
    return registry.isOpen(this);
  }

  /**
   * Sends data to the front end.
   *
   * @param data texts, numbers, booleans, nulls, and maps, lists and arrays of them
   * @throws IllegalStateException when the comm is closed
   * @throws IllegalArgumentException when the data holds anything else
   */
  public void send(Map<String, ?> data) {
    send(data, List.of());
  }

  /**
   * Sends data and binary parts to the front end.
   *
   * @param data as above
   * @param buffers the binary parts
   * @throws IllegalStateException when the comm is closed
   * @throws IllegalArgumentException when the data holds anything else
   */
  public void send(Map<String, ?> data, List<byte[]> buffers) {
    registry.send(this, data, buffers);
  }

  /**
   * Sets what is done with what the front end sends. It is called as if it stood in a cell.
   *
   * @param listener what is done
   * @return this comm
   */
  public Comm onMessage(Consumer<CommMessage> listener) {
    onMessage = Objects.requireNonNull(listener, "listener");
    return this;
  }

  /**
   * Sets what is done when the front end closes the comm.
   *
   * @param listener what is done
   * @return this comm
   */
  public Comm onClose(Consumer<CommMessage> listener) {
    onClose = Objects.requireNonNull(listener, "listener");
    return this;
  }

  /** Closes the comm on both sides; a closed one stays closed. */
  public void close() {
    registry.close(this);
  }

  void received(CommMessage message) {
    onMessage.accept(message);
  }

  void closedByFrontEnd(CommMessage message) {
    onClose.accept(message);
  }
}
