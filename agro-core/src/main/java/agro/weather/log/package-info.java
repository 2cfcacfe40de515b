/** Temperature logs as loggers, spreadsheets and archives write them, read with a report. */
package agro.weather.log;
