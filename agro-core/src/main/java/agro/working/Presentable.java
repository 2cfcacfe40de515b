package agro.working;

/** A result that a person reads. */
public interface Presentable {

  /**
   * The result in print.
   *
   * @return blocks of text, facts, tables, steps, cautions and sources
   */
  Presentation presentation();
}
