/**
 * How the library speaks of trouble: problems of input in four parts, reports of everything that a
 * reader assumed, mended, dropped or filled, and the progress of long work.
 */
package agro.report;
