/**
 * Papers for a class: what is asked and for how many marks, who is in the class, each student's own
 * numbers, answers from a file, marks and what the class has to hear again.
 */
package agro.course.paper;
