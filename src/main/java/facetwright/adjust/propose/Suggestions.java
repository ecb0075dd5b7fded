package facetwright.adjust.propose;

import facetwright.adjust.Remark;
import facetwright.adjust.write.Writing;
import facetwright.adjust.write.Written;
import facetwright.script.WhatIf;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Gathers the ways to take a proposal, and what is to be said of them. */
final class Suggestions {
  private final WhatIf what;
  private final List<Suggestion> ways = new ArrayList<>();
  private final List<Remark> remarks = new ArrayList<>();

  Suggestions(WhatIf what) {
    this.what = what;
  }

  /** Turns dials and leaves the script alone. */
  void turn(Map<String, String> settings) {
    ways.add(new Suggestion("Turn the dials", settings, what.source()));
  }

  /** Takes a written script, with these dials set beside it. */
  void write(String name, Map<String, String> settings, Written written) {
    ways.add(new Suggestion(name, settings, written.text()));
  }

  /** A written script whose own values are the dials'; says why where there is none. */
  void writeAll(String name, Written written) {
    if (written.isThere()) {
      write(name, Map.of(), written);
      note(written);
      int line = what.hasAim() ? Writing.lineOfAim(what.source()) : 0;
      if (line > 0) {
        remarks.add(
            new Remark(
                "Line "
                    + line
                    + ": the script's own aim would turn its dials again. Written into the script,"
                    + " it becomes a comment.",
                new facetwright.words.Site(line, 1)));
      }
    } else {
      remarks.add(
          Remark.of("It can't be written into the script, for that " + written.why() + "."));
    }
  }

  /** What else is other in a written script. */
  void note(Written written) {
    if (!written.note().isEmpty()) {
      remarks.add(Remark.of("Where it is written into the script: " + written.note()));
    }
  }

  List<Suggestion> all() {
    return ways;
  }

  List<Remark> remarks() {
    return remarks;
  }
}
