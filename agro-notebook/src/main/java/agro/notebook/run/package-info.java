/**
 * Runs notebooks without a server: a notebook file in; out comes the same notebook with its
 * outputs, a page that needs nothing else, and the live objects of cells that a test wants to look
 * at. It knows no agronomy and would run anybody's notebook.
 */
package agro.notebook.run;
