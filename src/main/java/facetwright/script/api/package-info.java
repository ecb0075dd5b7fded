/**
 * The functions a script sees, each described once: what it is called, what it takes and in which
 * range, what it does, and an example that runs. The same description checks every call, writes the
 * reference in docs/ and feeds completion.
 *
 * <p>A <em>function</em> ({@link facetwright.script.api.Fn}) belongs to a <em>kind of thing</em>
 * ({@link facetwright.script.api.Thing}): the top level, a wrap, a panel, a form. An
 * <em>argument</em> ({@link facetwright.script.api.Arg}) has a {@link facetwright.script.api.Kind},
 * which reads the script's value and refuses nonsense with the allowed range.
 */
package facetwright.script.api;
