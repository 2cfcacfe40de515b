/**
 * Temperatures of a place: daily extremes with the origin and the error of every day, readings with
 * their times, and the medium that the thermometer stood in.
 */
package agro.weather;
