/**
 * Long work that can be watched, stopped and bounded.
 *
 * <p>Words. Work counts <em>steps</em> as it goes; a step is a small, bounded deal of work, about a
 * millionth of a second of it on a usual machine. Steps are counted, not time, so that the same
 * work ends in the same way on every machine. Who began the work holds its {@link
 * facetwright.pace.Pace}, sees how far it is, and may ask it to stop.
 */
package facetwright.pace;
