/**
 * Quantities and units of the trade on exact factors, used at the boundary of the library. Inside,
 * plain doubles carry their unit in their name ({@code celsius}, {@code degreeDaysC}).
 */
package agro.units;
