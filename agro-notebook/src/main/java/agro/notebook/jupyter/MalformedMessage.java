package agro.notebook.jupyter;

/** Frames that are no message of the protocol, or not one of somebody who knows the key. */
final class MalformedMessage extends Exception {

  private static final long serialVersionUID = 1L;

  MalformedMessage(String what) {
    super(what);
  }
}
