/**
 * A script as text to be worked on, without any window.
 *
 * <p>A <em>token</em> is a word, number, text, mark or comment; a <em>reading</em> is a script cut
 * into tokens with its brackets paired; an <em>edit</em> puts other text in the place of a stretch;
 * an <em>offer</em> is a word that could be written at a place.
 */
package facetwright.workbench.card.text;
