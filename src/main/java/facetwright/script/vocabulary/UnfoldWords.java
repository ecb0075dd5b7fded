package facetwright.script.vocabulary;

import static facetwright.script.api.Arg.optional;
import static facetwright.script.api.Arg.usual;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.form.Form;
import facetwright.form.FormException;
import facetwright.form.unfold.Tabs;
import facetwright.form.unfold.UnfoldNote;
import facetwright.form.unfold.UnfoldResult;
import facetwright.form.unfold.UnfoldStyle;
import facetwright.form.unfold.Unfolding;
import facetwright.message.Message;
import facetwright.net.Net;
import facetwright.net.NetException;
import facetwright.net.sheet.Stock;
import facetwright.script.api.Arg;
import facetwright.script.api.FacetNaming;
import facetwright.script.api.Fn;
import facetwright.script.api.Kinds;
import facetwright.script.api.PartCard;
import facetwright.script.api.Session;
import facetwright.script.api.Things;
import facetwright.script.args.Anew;
import facetwright.words.Site;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Supplier;

/** The word that makes a net of a form. */
final class UnfoldWords {
  private UnfoldWords() {}

  static List<Fn<Form>> all() {
    return List.of(unfold());
  }

  private static Fn<Form> unfold() {
    Arg<UnfoldStyle> as =
        usual(
            "as",
            Kinds.word(UnfoldStyle.class),
            UnfoldStyle.SEARCH,
            "a strip of sides with the base and top at its edge, petals round the base or, where"
                + " that is open, the top, gores from pole to pole, or a search for the net that"
                + " packs small");
    Arg<String> base =
        optional("base", Kinds.text(), "the facet it stands on; usually \"base\" or the lowest");
    Arg<Boolean> tabs = usual("tabs", Kinds.flag(), true, "whether tabs are added");
    Arg<Double> tab = usual("tab", Kinds.length(1, 100), Tabs.USUAL.depth(), "how deep tabs are");
    Arg<Double> bevel =
        usual(
            "bevel",
            Kinds.degrees(0, 80),
            Tabs.USUAL.bevel(),
            "how far a tab's ends are cut back from square");
    Arg<String> part =
        optional(
            "part", Kinds.text(), "what this part is called, where a design has several: \"lid\"");
    PartCard.Options own = PartCard.Options.fresh();
    return Fn.<Form>named("unfold")
        .does(
            "Lays the form flat: the net becomes part of the design. Each cut edge gets a tab on"
                + " one of its sides, cut back where it would clash or show. A form that a mirror"
                + " leaves as it is comes out as a net whose one half mirrors the other where that"
                + " costs no tab, no larger sheet and at most "
                + Unfolding.FOR_A_MIRROR
                + " % of size; where the net is symmetric, so are its tabs.")
        .options(own.after(as, base, tabs, tab, bevel, part))
        .gives(Things.PART, "the part it becomes, to be put over, into, on or beside another")
        .example(
            """
            design("Six-sided box");
            prism({ sides: 6, side: 30, height: 40 }).unfold({ as: "petals", tab: 8 });
            """)
        .runs(
            (form, call) -> {
              Tabs made =
                  call.get(tabs)
                      ? Tabs.deep(call.get(tab)).withBevel(90 - call.get(bevel))
                      : Tabs.NONE;
              Unfolding unfolding = Unfolding.as(call.get(as)).with(made);
              if (call.has(base)) {
                // A wrong name is told here, at the call.
                form.facet(call.get(base));
                unfolding = unfolding.on(call.get(base));
              }
              Unfolding based = unfolding;
              Session session = call.session();
              Anew.counts(form, session.twice());
              String called = call.get(part);
              PartCard card = own.read(call);
              Object laid = new Object();
              session.add(
                  laid,
                  () ->
                      net(
                          session,
                          () -> smallest(session, form, based, card).unfold(),
                          call.site()),
                  FacetNaming.speaking(form));
              return call.hold(
                  Things.PART, session.part(laid, called == null ? "" : called, card, call.site()));
            });
  }

  private static Place place(UnfoldNote note, Net net) {
    OptionalInt join = note.join(net);
    return join.isPresent()
        ? new Place.AtJoin(join.getAsInt())
        : note.facets().isEmpty()
            ? new Place.WholeNet()
            : new Place.AtPanel(note.facets().getFirst());
  }

  /** Made when the script has ended, since the sheet to fit may be named after the form. */
  private static Smallest smallest(Session session, Form form, Unfolding unfolding, PartCard card) {
    List<Stock> sizes = session.sizes().stream().map(card::on).distinct().toList();
    return new Smallest(form, unfolding, sizes, session.rooms());
  }

  private static Net net(Session session, Supplier<UnfoldResult> made, Site site) {
    try {
      UnfoldResult result = made.get();
      for (UnfoldNote note : result.notes()) {
        session.find(
            new Finding(
                "unfolding",
                result.splits() ? Finding.Severity.WARNING : Finding.Severity.NOTE,
                note.told(),
                Message.EMPTY,
                place(note, result.net()),
                site));
      }
      return result.net();
    } catch (FormException e) {
      throw new NetException(e.told(), site);
    }
  }
}
