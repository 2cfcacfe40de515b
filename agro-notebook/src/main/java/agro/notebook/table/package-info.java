/** Results and records as Tablesaw tables with typed columns, and how such tables are shown. */
package agro.notebook.table;
