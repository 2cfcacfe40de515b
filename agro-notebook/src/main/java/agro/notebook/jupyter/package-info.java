/**
 * The Jupyter kernel: sockets, signed messages, requests and replies of the messaging protocol 5.4
 * around one evaluator of cells. Knows no agronomy.
 */
package agro.notebook.jupyter;
