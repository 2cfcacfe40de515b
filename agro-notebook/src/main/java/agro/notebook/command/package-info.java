/** The command line. The only place where the runner of notebooks and the agronomy meet. */
package agro.notebook.command;
