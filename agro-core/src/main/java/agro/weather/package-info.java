/**
 * Temperatures of a place: logs read with a report, daily extremes with the origin of every day,
 * the offset between a field and a station, and past years as possible futures.
 */
package agro.weather;
