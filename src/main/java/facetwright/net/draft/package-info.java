/**
 * The drafts that every way into the model works on, until they are a {@link facetwright.net.Net}
 * that has passed its invariants.
 */
package facetwright.net.draft;
