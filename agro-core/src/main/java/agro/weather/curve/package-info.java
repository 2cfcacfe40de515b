/** The temperature through a day, drawn from its extremes. */
package agro.weather.curve;
