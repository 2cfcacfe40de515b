/**
 * The season on one page for each field: what is known of its pests, what the labels allow, and the
 * words for it in two languages and two reading levels.
 */
package agro.programme.bulletin;
