package facetwright.net.fitting;

import java.io.Serializable;
import java.util.List;

/** What goes in or on, or is to be told. Lengths in mm, volumes in mm³. */
public sealed interface Extra extends Serializable {
  /** What is not named. */
  double NOT_SAID = Double.NaN;

  /**
   * A ribbon.
   *
   * @param through panels whose holes it goes through; empty where it is tied only
   * @param tied where it is tied, in words; empty where that is not said
   */
  record Ribbon(double length, double width, List<Integer> through, String tied) implements Extra {
    public Ribbon {
      through = List.copyOf(through);
    }
  }

  /**
   * A light that runs on a battery, round.
   *
   * @param kind what it is called, such as "tea light"
   */
  record Light(String kind, double across, double height) implements Extra {}

  /**
   * What a box is filled with.
   *
   * @param what in words
   * @param count how many, 0 where not said
   * @param across of one of them, or {@link #NOT_SAID}
   * @param volume of all, or {@link #NOT_SAID}
   */
  record Filling(String what, int count, double across, double volume) implements Extra {
    public boolean hasVolume() {
      return !Double.isNaN(volume);
    }

    public boolean hasSize() {
      return !Double.isNaN(across);
    }
  }

  /** What the maker wants told. */
  record Note(String text) implements Extra {}

  /** How wide what lies loose inside is, in mm; 0 of what does not, or where that is not said. */
  default double loose() {
    return switch (this) {
      case Light light -> light.across;
      case Filling filling -> filling.hasSize() ? filling.across : 0;
      case Ribbon _, Note _ -> 0;
    };
  }

  /** What it is called in a sentence. */
  default String called() {
    return switch (this) {
      case Ribbon _ -> "the ribbon";
      case Light light -> "the " + light.kind();
      case Filling filling -> "the filling, " + filling.what() + ",";
      case Note _ -> "the note";
    };
  }
}
