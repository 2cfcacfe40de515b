/**
 * Statistics that no library at hand has in the form needed here: bounded least squares, bootstrap
 * and profile intervals, straight lines with their standard errors, information criteria.
 *
 * <p>Knows no units and no agronomy: everything is a plain number.
 */
package agro.stats;
