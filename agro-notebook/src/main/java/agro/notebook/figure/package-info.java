/**
 * Figures of our results: one look for all, units on every axis, uncertainty drawn, readable in
 * grey and by the colour-blind, each with alternative text and the numbers that were drawn.
 */
package agro.notebook.figure;
