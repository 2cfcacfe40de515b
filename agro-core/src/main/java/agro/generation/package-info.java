/**
 * Timing of a pest's generations from trap counts: the fit of flight curves on the degree-day scale
 * and the forecast of the flights to come, with the spread of seasons and weather in every date.
 */
package agro.generation;
