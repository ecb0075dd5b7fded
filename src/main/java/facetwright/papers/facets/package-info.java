/**
 * The facets of a design, numbered: the words that each answers to in a script, its size, and which
 * way it faces.
 */
package facetwright.papers.facets;
