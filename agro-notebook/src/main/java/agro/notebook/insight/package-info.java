/**
 * What can be said about code without running it: how a word may go on, what a name stands for,
 * whether a cell is complete, and which slip a compiler's message points at. Knows no agronomy.
 */
package agro.notebook.insight;
