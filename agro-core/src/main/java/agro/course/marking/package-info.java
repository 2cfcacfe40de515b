/** Marks typed answers: reads them with their units, recognises mistakes, carries slips forward. */
package agro.course.marking;
