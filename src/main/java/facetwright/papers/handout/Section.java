package facetwright.papers.handout;

import java.util.List;

/** One part of a handout under a heading of its own. */
public sealed interface Section {
  String heading();

  /** Lines that stand in no order. */
  record Facts(String heading, List<String> lines) implements Section {
    public Facts {
      lines = List.copyOf(lines);
    }
  }

  /** Lines to be followed one after the other. */
  record Ordered(String heading, List<String> lines) implements Section {
    public Ordered {
      lines = List.copyOf(lines);
    }
  }

  /** Pictures in the order of the work. */
  record Pictures(String heading, List<Picture> pictures) implements Section {
    public Pictures {
      pictures = List.copyOf(pictures);
    }
  }
}
