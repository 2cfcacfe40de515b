/**
 * Doses scaled to what stands in front of the user: dilutions and stock solutions, mixtures of two
 * strengths, plate counts, seed, rows, plants, spots and bands, manure enriched with living agents,
 * soil, the water of the tank, and the measures of the field.
 *
 * <p>Every calculation is a record with {@code evaluate()}; its result holds exact numbers, the
 * steps as on a blackboard and the cautions. Both sides of a dilution have one basis, moisture says
 * whether it is counted on wet or on dry matter, and a figure for the treated ground is a type
 * other than one for the field.
 */
package agro.dose.scaling;
