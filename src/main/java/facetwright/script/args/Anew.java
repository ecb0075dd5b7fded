package facetwright.script.args;

import facetwright.form.EdgeTab;
import facetwright.form.Facet;
import facetwright.form.FacetLayer;
import facetwright.form.Form;
import facetwright.net.Backing;
import facetwright.net.Opening;
import facetwright.script.api.Call;
import facetwright.script.api.Handle;
import facetwright.script.api.Things;
import facetwright.words.SaidTwice;
import facetwright.words.Site;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** What is said of facets anew: a form in which nothing is left of what was said before is told. */
public enum Anew {
  LAYER("layer", f -> f.layers().stream().map(FacetLayer::site)),
  BACKING("backing", f -> backings(f).map(Backing::site)),
  /** What holds facets together. */
  JOIN("", f -> f.tabs().stream().map(EdgeTab::site));

  private final String word;

  @SuppressWarnings("ImmutableEnumChecker") // It holds nothing that could change.
  private final Function<Facet, Stream<Site>> said;

  Anew(String word, Function<Facet, Stream<Site>> said) {
    this.word = word;
    this.said = said;
  }

  /** The form that a call gives, with a note of what of the one before is lost in it. */
  public Handle<Form> hold(Call call, Form before, Form after) {
    List<Site> old = sites(before);
    if (!old.isEmpty()) {
      call.session()
          .twice()
          .replaced(
              word.isEmpty() ? call.function() : word, old, sites(after), s -> s, call.site());
    }
    return call.hold(Things.FORM, after);
  }

  private List<Site> sites(Form form) {
    return form.facets().stream().flatMap(said).toList();
  }

  /** A form becomes a net: all that is said in it counts. */
  public static void counts(Form form, SaidTwice twice) {
    for (Anew anew : values()) {
      anew.sites(form).forEach(twice::counts);
    }
  }

  private static Stream<Backing> backings(Facet facet) {
    return facet.openings().stream()
        .flatMap(o -> o instanceof Opening.Window w ? w.backing().stream() : Stream.empty());
  }
}
