package facetwright.form.unfold;

import facetwright.message.Message;
import facetwright.net.Join;
import facetwright.net.Net;
import java.io.Serializable;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * What a maker should know about a net that was found.
 *
 * @param told in words
 * @param facets those it is about: two for the edge between them, none for the whole form
 */
public record UnfoldNote(Message told, List<Integer> facets) implements Serializable {
  public UnfoldNote {
    facets = List.copyOf(facets);
  }

  /** One about the whole form. */
  static UnfoldNote ofAll(Message told) {
    return new UnfoldNote(told, List.of());
  }

  static UnfoldNote ofEdge(Message told, FlatForm flat, int edge) {
    return new UnfoldNote(told, List.of(flat.edge(edge).left(), flat.edge(edge).right()));
  }

  /** The join of the net that it is about: the seam between its two facets, where they have one. */
  public OptionalInt join(Net net) {
    return IntStream.range(0, net.joins().size())
        .filter(
            j ->
                facets.size() == 2
                    && net.joins().get(j) instanceof Join.Seam seam
                    && facets.contains(seam.a().panel())
                    && facets.contains(seam.b().panel())
                    && seam.a().panel() != seam.b().panel())
        .findFirst();
  }
}
