/**
 * Results in print: the steps of a calculation, tables with units, cautions, and the forms in which
 * they appear (plain text, Markdown, HTML, LaTeX, and comma-separated files for spreadsheets).
 *
 * <p>Numbers arrive here unrounded and are rounded only in print. Text from data is escaped in
 * every form that could take it for an instruction.
 */
package agro.working;
