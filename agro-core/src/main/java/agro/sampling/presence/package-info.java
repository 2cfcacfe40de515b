/** From the share of units with animals to their mean number, and back. */
package agro.sampling.presence;
