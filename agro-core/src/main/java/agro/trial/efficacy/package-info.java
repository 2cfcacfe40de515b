/**
 * Efficacy of treatments against the control: four published formulas with their steps, per plot,
 * per block and over blocks, with limits, over several dates, and advice which formula fits.
 */
package agro.trial.efficacy;
