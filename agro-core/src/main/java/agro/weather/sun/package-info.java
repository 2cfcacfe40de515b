/** Where the sun stands: declination, day length, sunrise and sunset. */
package agro.weather.sun;
