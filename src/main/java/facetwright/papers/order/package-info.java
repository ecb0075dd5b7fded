/**
 * What papers are ordered for, chosen once and handed to every one of them.
 *
 * <p>Words. A <em>page</em> is what the printer takes. A <em>paper</em> is decorative paper, from
 * which layers are cut. A <em>sheet</em> is card.
 */
package facetwright.papers.order;
