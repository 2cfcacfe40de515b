/**
 * The kernel spec by which Jupyter finds the kernel, the class-data archive for its start, and the
 * check of an installation. Talks to the kernel as any client does: through its sockets.
 */
package agro.notebook.install;
