/**
 * The teaching layer: exercises with own numbers for every student, their worked solutions, and
 * what a typed answer is compared with. The parts below set exercises by topic, mark them and print
 * papers.
 */
package agro.course;
