/**
 * Where the parts of a design go when they are put together: a lid over its box, a drawer into its
 * sleeve, a shaft on its base.
 *
 * <p>Words. A part's <em>skin</em> is what is seen of it from without, its openings closed flat. A
 * <em>mouth</em> is an opening that something may go into. What goes in goes along the mouth's
 * <em>axis</em>. {@link facetwright.fold.place.Putting} is the front door.
 */
package facetwright.fold.place;
