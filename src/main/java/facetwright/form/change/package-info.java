/**
 * Changes that make another form of a form: bevels, cuts, raised and twisted facets, duals, stacks.
 * Each is a {@link facetwright.form.Change}.
 */
package facetwright.form.change;
