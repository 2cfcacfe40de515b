/** Exercises on product and water for fields, tanks and pumps. */
package agro.course.topic.dose;
