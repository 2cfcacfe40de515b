/**
 * The limits of labels over a season: what is allowed on which day, when a field may be picked or
 * entered, how much is left, and what bees and natural enemies ask for. A known breach comes before
 * what is not known, and what is not known before what is allowed.
 */
package agro.programme.interval;
