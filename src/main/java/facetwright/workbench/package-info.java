/**
 * The window: a maker's table.
 *
 * <p>The <em>desk</em> holds what is being worked on: the script, its dial settings, the last good
 * design and what is wrong now. The <em>table</em> shows the net on its sheet, the <em>lens</em>
 * the folded form, the <em>drawer</em> the dials, the <em>card</em> the script. Views watch the
 * desk and tell it what the user does; they do not know each other.
 */
package facetwright.workbench;
