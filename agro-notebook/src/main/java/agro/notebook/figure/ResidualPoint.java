package agro.notebook.figure;

/**
 * One observation in a figure of residuals.
 *
 * @param label what it is called in the figure
 * @param group what belongs together in the table, such as the treatment; may be empty
 * @param fitted what the model expects
 * @param standardised residual over its standard error
 */
record ResidualPoint(String label, String group, double fitted, double standardised) {}
