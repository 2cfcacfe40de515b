/**
 * The evaluator of cells: the JDK's own shell in this process, with class redefinition, so that a
 * cell that is run again never takes a value away behind the reader's back. It knows no agronomy.
 */
package agro.notebook.kernel;
