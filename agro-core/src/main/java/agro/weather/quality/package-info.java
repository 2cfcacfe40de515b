/**
 * Quality control of temperatures after published procedures: values that look wrong are flagged
 * with the rule, the limit and its source. Nothing is deleted unless a person names the rules whose
 * flagged values shall go.
 */
package agro.weather.quality;
