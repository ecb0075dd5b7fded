/**
 * What is told to a maker, with the values it tells of: a {@link facetwright.message.Message} is
 * literal words and {@link facetwright.message.Value}s, and is worded once, in the unit of whoever
 * reads it. No text is searched for a length.
 */
package facetwright.message;
