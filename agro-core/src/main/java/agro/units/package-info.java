/**
 * Quantities and units of the trade on exact factors, used at the boundary of the library. Inside,
 * plain doubles carry their unit in their name ({@code celsius}, {@code degreeDaysC}).
 *
 * <p>Each kind is a record over one double: {@code Volume.of(15, VolumeUnit.LITRE)}. A rate is
 * counted in a usual unit, {@code VolumePerAreaUnit.MILLILITRE_PER_ACRE}, or in one that is put
 * together, {@code VolumePerArea.unit(VolumeUnit.MILLILITRE, LandUnit.BIGHA_WEST_BENGAL)}. These
 * kinds are neutral: they know litre per hectare, and not whether it is spray or product.
 *
 * <p>Nothing here links code at run time (no lambda, no text formatting, no regular expression), so
 * that the first quantity of a program costs a few milliseconds.
 */
package agro.units;
