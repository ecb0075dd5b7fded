/**
 * A page that a student can follow, as content: what is said and which pictures stand by it, in
 * order. How it looks is left to whoever draws it.
 */
package facetwright.papers.handout;
