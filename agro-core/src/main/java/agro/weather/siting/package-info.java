/**
 * Where a thermometer stands and how it is read, and what that does to its figures: soil from air,
 * lapse with height, sun on the sensor, the hour of observation, few readings a day.
 */
package agro.weather.siting;
