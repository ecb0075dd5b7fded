package facetwright.papers.handout;

import facetwright.fold.making.GlueOrder;
import facetwright.fold.pose.FoldedForm;
import facetwright.language.Telling;
import facetwright.net.Net;
import facetwright.net.fitting.Extra;
import facetwright.net.fitting.Fitting;
import facetwright.net.fitting.LightKind;
import facetwright.words.Sentence;
import java.util.List;
import java.util.Map;

/** What goes in or on, and what its maker notes, as a step in words. */
final class FittingText {
  /** So many panels are named one by one. */
  private static final int NAMED = 3;

  private final Net net;
  private final FoldedForm form;
  private final Telling tell;
  private final Map<Integer, Integer> numbers;

  /**
   * @param gluing in which order all is made up: what is glued is told by its number there
   */
  FittingText(Net net, GlueOrder gluing, Telling tell) {
    this.numbers = gluing.numbers().ofPanels(net);
    this.net = net;
    this.form = gluing.form();
    this.tell = tell;
  }

  /**
   * A step in a sentence or more.
   *
   * @param isLater whether something is glued after it
   */
  String of(Fitting fitting, boolean isLater) {
    String later = String.valueOf(isLater);
    String told =
        switch (fitting.thing()) {
          case Extra.Ribbon ribbon -> ribbon(ribbon, later);
          case Extra.Light light ->
              tell.say(
                  "gluing.light",
                  "later",
                  later,
                  "kind",
                  LightKind.word(light.kind()),
                  "called",
                  light.kind(),
                  "across",
                  tell.read(light.across()),
                  "height",
                  tell.read(light.height()));
          case Extra.Filling filling -> filling(fitting, filling, later);
          case Extra.Note note -> Sentence.capital(note.text()) + ".";
        };
    // What a script says may end a sentence itself.
    return told.replaceAll("([.!?…])\\.$", "$1");
  }

  private String ribbon(Extra.Ribbon ribbon, String later) {
    String length = tell.read(ribbon.length());
    String width = tell.read(ribbon.width());
    if (ribbon.through().isEmpty()) {
      return tell.say(
          "gluing.tie", "later", later, "length", length, "width", width, "tied", ribbon.tied());
    }
    List<Integer> panels = ribbon.through();
    boolean isOfTabs = numbers.keySet().containsAll(panels);
    List<String> names =
        isOfTabs
            ? panels.stream().map(numbers::get).distinct().sorted().map(String::valueOf).toList()
            : panels.stream().map(p -> tell.quoted(net.panels().get(p).name())).toList();
    return tell.say(
        "gluing.ribbon",
        "later",
        later,
        "length",
        length,
        "width",
        width,
        "where",
        isOfTabs ? "tabs" : names.size() <= NAMED ? "panels" : "many",
        "count",
        names.size(),
        "names",
        tell.listed(names),
        "first",
        names.getFirst(),
        "last",
        names.getLast(),
        "knot",
        String.valueOf(!ribbon.tied().isEmpty()),
        "tied",
        ribbon.tied());
  }

  private String filling(Fitting fitting, Extra.Filling filling, String later) {
    double holds = filling.hasVolume() ? 0 : form.measures(net, fitting.panels()).volume();
    boolean isHeld = Handout.isSolved(form) && holds > 0;
    return tell.say(
        "gluing.filling",
        "later",
        later,
        "how",
        filling.hasVolume()
            ? "volume"
            : filling.count() > 0 ? "count" : isHeld ? "held" : "unknown",
        "count",
        filling.count(),
        "what",
        filling.what(),
        "sized",
        String.valueOf(filling.hasSize()),
        "across",
        filling.hasSize() ? tell.read(filling.across()) : "",
        "volume",
        tell.volume(filling.hasVolume() ? filling.volume() : holds));
  }
}
