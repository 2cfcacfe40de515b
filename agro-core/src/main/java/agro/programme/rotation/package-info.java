/**
 * Rotation of modes of action: the groups as data, the windows in which one group may be used, the
 * rules that a programme is held against, and the search for all programmes that keep to them.
 */
package agro.programme.rotation;
