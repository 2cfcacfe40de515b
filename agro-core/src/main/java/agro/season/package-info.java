/**
 * A season folder: the places, logs, pests, traps and visits of an adviser as plain CSV files in a
 * written layout. One call gives what a fit and a forecast need for one pest at one place, and a
 * report of everything that was assumed, dropped or filled on the way.
 */
package agro.season;
