/**
 * What the words of a script stand for, as far as its text tells: what a name is, which function of
 * the language a call calls, which argument a place belongs to.
 */
package facetwright.script.scope;
