/**
 * Questions to a design and what is proposed, as plain data that travels between processes: a
 * <em>proposal</em> says what would change, and the <em>ways</em> in which it can be taken.
 */
package facetwright.adjust.propose;
