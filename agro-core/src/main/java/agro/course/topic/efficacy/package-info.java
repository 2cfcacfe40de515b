/** Exercises on the efficacy of treatments in per cent. */
package agro.course.topic.efficacy;
