package facetwright.papers.handout;

import java.util.List;
import java.util.Optional;

/** One part of a handout under a heading of its own. */
public sealed interface Section {
  String heading();

  /** How many numbered steps it has; they are counted through the whole handout. */
  int count();

  /**
   * Lines that stand in no order.
   *
   * @param picture beside them; often none
   */
  record Facts(String heading, Optional<Picture> picture, List<String> lines) implements Section {
    public Facts {
      lines = List.copyOf(lines);
    }

    public Facts(String heading, List<String> lines) {
      this(heading, Optional.empty(), lines);
    }

    @Override
    public int count() {
      return 0;
    }
  }

  /** Lines to be followed one after the other. */
  record Ordered(String heading, List<String> lines) implements Section {
    public Ordered {
      lines = List.copyOf(lines);
    }

    @Override
    public int count() {
      return lines.size();
    }
  }

  /**
   * Steps with a picture and words each; words may be long.
   *
   * @param notes what to know before them
   */
  record Steps(String heading, List<String> notes, List<Picture> pictures) implements Section {
    public Steps {
      notes = List.copyOf(notes);
      pictures = List.copyOf(pictures);
    }

    @Override
    public int count() {
      return pictures.size();
    }
  }

  /** Pictures side by side in the order of the work, with few words. */
  record Pictures(String heading, List<Picture> pictures) implements Section {
    public Pictures {
      pictures = List.copyOf(pictures);
    }

    @Override
    public int count() {
      return pictures.size();
    }
  }
}
