/**
 * Evaluates scripts in a process of its own, so that a script which can't be stopped costs nothing
 * but that process.
 *
 * <p>The <em>workshop</em> keeps one worker at the bench and one <em>spare</em>, warmed up, beside
 * it. An <em>ask</em> is a script with its dial settings; the <em>reply</em> is the finished design
 * or what went wrong; or, where a question is asked of the design, the answer to it. The newest ask
 * wins: the one before it is told to stop, and where the worker does not answer that in time it is
 * ended and the spare takes its place.
 */
package facetwright.worker;
