/**
 * How counts are spread over a field: indices, the negative binomial, and lines over many fields.
 */
package agro.sampling.dispersion;
