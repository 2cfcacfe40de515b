/**
 * Our renderers in other Java kernels. Neither of those kernels is needed unless its own adapter is
 * used.
 */
package agro.notebook.adapter;
