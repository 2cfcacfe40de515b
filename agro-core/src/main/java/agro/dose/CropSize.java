package agro.dose;

/** What explains that a sprayer's volume is not the one that a label assumes. */
public enum CropSize {
  /** The crop is still small and takes less spray than the full crop of the label. */
  SMALL("the crop is small"),
  /** The crop is as large as the label assumes; nothing explains another volume. */
  AS_ON_LABEL("the crop is as the label assumes"),
  /** The crop is larger or denser than the label assumes. */
  DENSE("the crop is dense"),
  /** Nobody has said how large the crop is. */
  NOT_STATED("the size of the crop is not stated");

  private final String words;

  CropSize(String words) {
    this.words = words;
  }

  /**
   * The size in words.
   *
   * @return a clause
   */
  public String words() {
    return words;
  }
}
