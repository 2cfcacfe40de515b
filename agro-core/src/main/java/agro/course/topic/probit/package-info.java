/** Exercises on dose and response, as they are solved by hand. */
package agro.course.topic.probit;
