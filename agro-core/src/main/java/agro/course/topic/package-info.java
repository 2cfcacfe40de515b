/** All types of exercises by version of the generator; each topic has a package below. */
package agro.course.topic;
