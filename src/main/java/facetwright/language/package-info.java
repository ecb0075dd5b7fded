/**
 * The languages that papers speak, and their phrases: what a learner reads is worded here alone, in
 * bundles of messages that a translator can work on.
 */
package facetwright.language;
