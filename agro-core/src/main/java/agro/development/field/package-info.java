/** Base temperatures from durations in the field, by the published criteria. */
package agro.development.field;
