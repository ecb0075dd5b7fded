/**
 * The tour: small notes beside the real controls, one after another, with something to do at each.
 */
package facetwright.workbench.tour;
