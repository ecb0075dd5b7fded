/**
 * What has to be bought and how long it takes, for one piece of a design or many.
 *
 * <p>Words. A <em>need</em> is so much of one thing, exactly. A <em>purchase</em> is a need with a
 * spare, rounded up to what shops sell. The rules by which lengths, times and spares are reckoned
 * are {@link facetwright.papers.materials.Rules}; they are common practice, no source, and every
 * page that shows a result says so.
 */
package facetwright.papers.materials;
