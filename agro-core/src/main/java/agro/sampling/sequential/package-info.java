/**
 * Sequential classification: stop lines, their exact properties, and a plan on its way through a
 * field.
 */
package agro.sampling.sequential;
