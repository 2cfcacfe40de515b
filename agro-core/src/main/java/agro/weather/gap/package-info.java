/** Filling of gaps, with the error of every filled value. */
package agro.weather.gap;
