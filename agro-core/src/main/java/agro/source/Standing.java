package agro.source;

/** How well a stated fact is backed, so that a reader can tell a printed table from a memory. */
public enum Standing {
  /** The figure was read in the cited source. */
  READ("read in the source"),
  /** The figure is quoted from memory of the cited source and still has to be looked up there. */
  FROM_MEMORY("value from memory"),
  /** The trade works this way; no publication is known to us. */
  COMMON_PRACTICE("common practice, no source"),
  /** The figure was computed by us with a method stated beside it. */
  COMPUTED("computed here"),
  /** The figure was made up for a demonstration and proves nothing. */
  INVENTED("invented for demonstration");

  private final String words;

  Standing(String words) {
    this.words = words;
  }

  /**
   * The standing in words, as it is printed beside a figure.
   *
   * @return a short phrase in lower case
   */
  public String words() {
    return words;
  }
}
