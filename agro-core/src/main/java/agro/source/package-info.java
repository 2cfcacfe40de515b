/**
 * Where a number comes from: literature, the range it was meant for, and the edition of a data set.
 *
 * <p>The lowest package of the library; it imports nothing of ours.
 */
package agro.source;
