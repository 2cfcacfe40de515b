/**
 * Changes and comparisons of the bytecode of cells: calls that would end the process are refused,
 * loops can be stopped, static initialisers are compared. Knows neither the shell nor the kernel.
 */
package agro.notebook.bytecode;
