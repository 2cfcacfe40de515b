/**
 * Dose-response: how many of a group respond to a dose, the curve through the groups, the doses
 * that kill a stated share with their limits, and series of animals beside each other.
 *
 * <p>A result says which animals counted as responding, which link, scale, information and rule for
 * heterogeneity it rests on. A limit that does not exist is said to be unbounded.
 */
package agro.trial.bioassay;
