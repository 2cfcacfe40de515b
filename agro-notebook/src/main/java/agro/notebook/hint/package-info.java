/**
 * Hints to slips with our own types, such as a temperature where a difference of temperatures is
 * wanted. The kernel finds them as a service and knows none of these types.
 */
package agro.notebook.hint;
