/**
 * Ground words: numbers, counts and sentences as a person reads them, the nearest of known names,
 * the place in a script that a thing comes from, and changes of a script that would mend it.
 */
package facetwright.words;
