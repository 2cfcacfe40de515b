/** Tests of the installed kernel with Debian's Jupyter; see the profiles jupyter and browser. */
package agro.notebook.installed;
