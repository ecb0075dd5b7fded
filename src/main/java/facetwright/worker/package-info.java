/**
 * Evaluates scripts in a process of its own, so that a script which can't be stopped costs nothing
 * but that process.
 *
 * <p>The <em>workshop</em> keeps one worker at the bench and one <em>spare</em>, warmed up, beside
 * it. An <em>ask</em> is a script with its dial settings; the <em>reply</em> is the finished design
 * or what went wrong; or, where a question is asked of the design, the answer to it. While one ask
 * is under way, the newest other one waits and takes the place of those before it; so answers
 * follow a hand that does not wait for them, and the last is always made. Only an ask that takes
 * far longer than usual is told to stop for a newer one, and only a worker that does not answer
 * even that is ended; the spare takes its place.
 */
package facetwright.worker;
