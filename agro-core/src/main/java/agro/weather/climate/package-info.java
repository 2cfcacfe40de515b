/** What is usual at a place, past years as possible futures, and a field beside a station. */
package agro.weather.climate;
