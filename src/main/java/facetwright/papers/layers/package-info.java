/**
 * Decorative layers: what is cut from patterned paper and glued on panels.
 *
 * <p>Words. A layer is smaller than its panel by the <em>reveal</em>, all round and round every
 * window and hole; what is left is its <em>inset</em>. Insets of one shape, paper and pattern
 * direction form a <em>group</em> and are cut together. A paper has a <em>face</em> where only one
 * side is to be seen, and is <em>directed</em> where its pattern has an upright. Triangles are cut
 * from a <em>strip</em>, points up and down in turn, between <em>ticks</em> on both of its edges.
 */
package facetwright.papers.layers;
