/**
 * Printable pages: a trial on a front sheet with an annex, and the bulletin of a field. Pages carry
 * their own style and pictures, and need neither scripts nor a network.
 */
package agro.notebook.page;
