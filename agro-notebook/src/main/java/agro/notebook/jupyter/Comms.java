package agro.notebook.jupyter;

import java.util.Map;
import java.util.Objects;

/** Where cells open comms to the front end and wait for comms that the front end opens. */
public final class Comms {

  private static volatile CommRegistry current;

  private Comms() {}

  /** Makes a kernel the one that cells of this process talk to. */
  static void use(CommRegistry registry) {
    current = registry;
  }

  /** Forgets a kernel that ends. */
  static void forget(CommRegistry registry) {
    if (current == registry) {
      current = null;
    }
  }

  /**
   * Lets front ends open comms under a name, in place of what had this name before.
   *
   * @param target the name
   * @param opened what is done when one is opened
   * @throws IllegalStateException outside a Jupyter kernel
   */
  public static void register(String target, CommTarget opened) {
    registry().register(Objects.requireNonNull(target), Objects.requireNonNull(opened));
  }

  /**
   * Lets front ends open no more comms under a name. Open ones stay open.
   *
   * @param target the name
   * @throws IllegalStateException outside a Jupyter kernel
   */
  public static void unregister(String target) {
    registry().unregister(target);
  }

  /**
   * Opens a comm to the front end.
   *
   * @param target the name of what the front end has for it
   * @param data what it begins with, as for {@link Comm#send}
   * @return the open comm
   * @throws IllegalStateException outside a Jupyter kernel
   */
  public static Comm open(String target, Map<String, ?> data) {
    return registry().open(Objects.requireNonNull(target), data);
  }

  private static CommRegistry registry() {
    var registry = current;
    if (registry == null) {
      throw new IllegalStateException(
          "comms lead to the front end of a Jupyter kernel; this code runs in none");
    }
    return registry;
  }
}
