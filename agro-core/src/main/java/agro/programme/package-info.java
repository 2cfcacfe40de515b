/**
 * What the parts of a treatment programme share: the user's own label records, fields, crops in the
 * ground, applications as they were made or planned, releases of natural enemies and bloom. Nothing
 * about a product is built in; every limit comes from the user's tables, and a cell that is empty
 * means that nobody has looked, never that there is no limit.
 */
package agro.programme;
