/** Counts in the field: what was counted, and in which unit. */
package agro.sampling;
