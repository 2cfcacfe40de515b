/** Exercises on counts, sample sizes, stop lines and densities. */
package agro.course.topic.sampling;
