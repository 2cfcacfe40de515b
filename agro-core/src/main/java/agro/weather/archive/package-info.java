/** The published layouts of national climate archives, read with their quality flags. */
package agro.weather.archive;
