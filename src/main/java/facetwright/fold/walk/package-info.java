/** The way from flat to made, step by step. */
package facetwright.fold.walk;
