/** A plan on its way through a field: counts fed one by one, and the sheet to print. */
package agro.sampling.field;
