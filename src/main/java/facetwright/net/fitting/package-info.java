/**
 * What goes in and on a piece beside its card: labels, ribbon, lights, filling, and the maker's own
 * notes, each with its place and its moment. A <em>fitting</em> is one such thing at its moment; a
 * <em>label</em> is words on a panel, printed there or cut of paper and glued on. A panel is named
 * by its number in the net.
 */
package facetwright.net.fitting;
