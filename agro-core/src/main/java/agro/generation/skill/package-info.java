/**
 * How good forecasts of flights are: scores, forecasts of past seasons as they would have been
 * issued, and plain references to beat.
 */
package agro.generation.skill;
