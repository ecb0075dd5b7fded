/**
 * The flat model: a net of panels, joined along scores, bounded by cuts.
 *
 * <p>Words. A <em>panel</em> is one flat region; its role is <em>facet</em> (a visible face of the
 * form), <em>tab</em> (glued under another panel) or <em>gusset</em> (folds inward between two
 * panels). A <em>score</em> is a crease pressed before folding, <em>mountain</em> when its crest
 * points at you and <em>valley</em> when it points away, always seen on the outside of the form. A
 * <em>slit</em> is a cut that two panels share. A <em>join</em> names two places that end up
 * together when the piece is made. A <em>piece</em> is what hangs together by scores.
 *
 * <p>A net is drawn outside up, in millimetres, x to the right and y up. {@link
 * facetwright.net.Net} is immutable and has passed its invariants; what may still be wrong is a
 * {@link facetwright.net.draft.NetDraft}.
 */
package facetwright.net;
