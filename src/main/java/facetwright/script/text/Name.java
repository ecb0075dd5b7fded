package facetwright.script.text;

/**
 * A name that a script makes.
 *
 * @param token where
 * @param maker the keyword that makes it, such as {@code const}; -1 for what a function is given
 * @param value the token its value begins with; -1 where it has none, or is a part of one
 * @param from the offset behind which it may be used
 * @param until the offset up to which it may be
 */
public record Name(String word, int token, int maker, int value, int from, int until) {}
