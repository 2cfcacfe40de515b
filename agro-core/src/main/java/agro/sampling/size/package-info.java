/** How many units to look at for a stated precision, and stop lines that keep it. */
package agro.sampling.size;
