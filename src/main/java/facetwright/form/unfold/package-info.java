/** Unfolding: the search for a net that does not lie on itself, and the tabs that hold it. */
package facetwright.form.unfold;
