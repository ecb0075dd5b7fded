/**
 * A script as text: what it is made of, and how it is changed. Everything that looks into a script
 * without running it reads it here.
 *
 * <p>A <em>token</em> is a word, number, text, sign or comment, as ECMA-262 cuts them; a
 * <em>reading</em> is a script cut into tokens with its brackets paired; a <em>stretch</em> goes by
 * characters, a <em>span</em> by tokens; a <em>call</em> is a name with brackets behind it; an
 * <em>edit</em> puts other text in the place of a stretch. Nothing here knows what a word means.
 */
package facetwright.script.text;
