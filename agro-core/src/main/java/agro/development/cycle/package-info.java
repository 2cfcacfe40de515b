/**
 * Distributed development: how the members of a cohort spread over time, and a life cycle of
 * several stages through the days of a temperature series.
 */
package agro.development.cycle;
