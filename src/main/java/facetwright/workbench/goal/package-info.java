/** Aiming: what a design should come to, and the dials that make it so. */
package facetwright.workbench.goal;
