/**
 * Power of planned comparisons: noncentral distributions, replicates needed for a stated
 * difference, and the smallest difference that a trial could have shown.
 */
package agro.stats.power;
