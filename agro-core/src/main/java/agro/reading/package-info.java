/**
 * Delimited text files with declared columns, read without guessing, and files written whole or not
 * at all. Every refusal is an {@link agro.report.InputProblem} that names file, line and column.
 */
package agro.reading;
