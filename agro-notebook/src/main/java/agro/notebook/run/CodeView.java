package agro.notebook.run;

/** How a page shows the code of a notebook. */
public enum CodeView {
  /** Above what it prints. */
  SHOWN,
  /** Behind a line that opens it; on paper left out. */
  FOLDED
}
