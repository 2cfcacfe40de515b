package agro.notebook.install;

/** A kernel that does not start, does not answer or does not end. */
final class KernelTrouble extends Exception {

  private static final long serialVersionUID = 1L;

  private final String complaint;

  /**
   * Makes a trouble.
   *
   * @param message what happened, as a sentence without a full stop
   * @param complaint what the process itself wrote; may be empty
   */
  KernelTrouble(String message, String complaint) {
    super(message);
    this.complaint = complaint;
  }

  /** What happened and, on lines of their own, what the process wrote. */
  String inFull() {
    return complaint.isEmpty()
        ? getMessage()
        : getMessage() + ". It wrote:\n    " + complaint.replace("\n", "\n    ");
  }
}
