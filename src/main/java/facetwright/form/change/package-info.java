/**
 * Changes that make another form of a form: chamfers, cuts, raised and twisted facets, duals,
 * stacks. Each is a {@link facetwright.form.Change}.
 */
package facetwright.form.change;
