/**
 * What a reader sees of a value: bundles of the same content in several formats, the services that
 * make them, and the two functions that cells call to show something before they end.
 */
package agro.notebook.display;
