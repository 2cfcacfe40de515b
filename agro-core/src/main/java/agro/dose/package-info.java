/**
 * Rates that know what they are: what a label states per area, per volume of spray, per plant, per
 * metre of row, per kilogram of seed, per tonne of substrate, per canopy or per spot; formulations
 * and their strength; and the limits of a label with the check of a planned dose against them.
 *
 * <p>Two amounts with the same unit and different meaning are different types here: product and
 * active ingredient, label rate and spray volume, ground, treated and leaf-wall area. One is turned
 * into another only through figures that are stated; what is missing is named and never guessed. A
 * range stays a range from the label to the result.
 */
package agro.dose;
