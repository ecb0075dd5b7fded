package facetwright.papers.handout;

import facetwright.fold.making.GlueOrder;
import facetwright.fold.pose.FoldedForm;
import facetwright.measure.Length;
import facetwright.measure.Millilitres;
import facetwright.measure.Unit;
import facetwright.net.Net;
import facetwright.net.fitting.Extra;
import facetwright.net.fitting.Fitting;
import facetwright.words.Sentence;
import java.util.List;
import java.util.Map;

/** What goes in or on, and what its maker notes, as a step in words. */
final class FittingText {
  /** So many panels are named one by one. */
  private static final int NAMED = 3;

  private final Net net;
  private final FoldedForm form;
  private final Unit unit;
  private final Map<Integer, Integer> numbers;

  /**
   * @param gluing in which order all is made up: what is glued is told by its number there
   */
  FittingText(Net net, GlueOrder gluing, Unit unit) {
    this.numbers = gluing.numbers().ofPanels(net);
    this.net = net;
    this.form = gluing.form();
    this.unit = unit;
  }

  /**
   * A step in a sentence or more.
   *
   * @param isLater whether something is glued after it
   */
  String of(Fitting fitting, boolean isLater) {
    String words =
        switch (fitting.thing()) {
          case Extra.Ribbon ribbon -> ribbon(ribbon);
          case Extra.Light light ->
              "put the "
                  + light.kind()
                  + " in, "
                  + length(light.across())
                  + " across and "
                  + length(light.height())
                  + " tall";
          case Extra.Filling filling -> filling(fitting, filling);
          case Extra.Note note -> note.text();
        };
    boolean isNote = fitting.thing() instanceof Extra.Note;
    String told = isLater && !isNote ? "before you go on, " + words : words;
    return Sentence.capital(told) + (told.matches(".*[.!?…]$") ? "" : ".");
  }

  private String ribbon(Extra.Ribbon ribbon) {
    String what =
        "the ribbon, " + length(ribbon.length()) + " long and " + length(ribbon.width()) + " wide";
    String tied = ribbon.tied().isEmpty() ? "" : "tie it " + ribbon.tied();
    if (ribbon.through().isEmpty()) {
      return "tie " + what + ", " + ribbon.tied();
    }
    return "thread "
        + what
        + ", through "
        + holes(ribbon.through())
        + " and draw both ends out"
        + (tied.isEmpty() ? "" : "; " + tied);
  }

  private String holes(List<Integer> panels) {
    if (numbers.keySet().containsAll(panels)) {
      List<String> told =
          panels.stream().map(numbers::get).distinct().sorted().map(String::valueOf).toList();
      return told.size() == 1
          ? "the hole of tab " + told.getFirst()
          : "the holes of tabs " + Sentence.listed(told);
    }
    List<String> names = panels.stream().map(p -> "“" + net.panels().get(p).name() + "”").toList();
    return names.size() <= NAMED
        ? (names.size() == 1 ? "the hole of " : "the holes of ") + Sentence.listed(names)
        : "the holes of all "
            + names.size()
            + " from "
            + names.getFirst()
            + " to "
            + names.getLast();
  }

  private String filling(Fitting fitting, Extra.Filling filling) {
    String what = filling.count() > 0 ? filling.count() + " " + filling.what() : filling.what();
    String size = filling.hasSize() ? ", each up to " + length(filling.across()) + " across" : "";
    if (filling.hasVolume()) {
      return "fill in " + what + size + ", " + Millilitres.text(filling.volume()) + " in all";
    }
    double holds = form.measures(net, fitting.panels()).volume();
    return filling.count() > 0
        ? "put in " + what + size
        : "fill in "
            + what
            + size
            + ", as much as goes in"
            + (Handout.isSolved(form) && holds > 0 ? ": it holds " + Millilitres.text(holds) : "");
  }

  private String length(double mm) {
    return new Length(mm).read(unit);
  }
}
