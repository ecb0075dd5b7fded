package facetwright.net.fitting;

import java.io.Serializable;
import java.util.List;
import java.util.stream.Stream;

/**
 * All that goes in and on a net's pieces.
 *
 * @param labels words on panels, in the order of the script
 * @param all things with their moments, in the order of the script
 */
public record Fittings(List<Label> labels, List<Fitting> all) implements Serializable {
  public static final Fittings NONE = new Fittings(List.of(), List.of());

  public Fittings {
    labels = List.copyOf(labels);
    all = List.copyOf(all);
  }

  /** Words only. */
  public static Fittings labelled(List<Label> labels) {
    return new Fittings(labels, List.of());
  }

  /** These, and more after them. */
  public Fittings and(Fittings more) {
    return new Fittings(
        Stream.concat(labels.stream(), more.labels.stream()).toList(),
        Stream.concat(all.stream(), more.all.stream()).toList());
  }

  /** The same things, other labels. */
  public Fittings with(List<Label> others) {
    return new Fittings(others, all);
  }

  /** The same of the mirror image of what they are in and on: words are read as before. */
  public Fittings mirrored() {
    return with(labels.stream().map(Label::mirrored).toList());
  }

  /** The same where so many panels come before. */
  public Fittings after(int by) {
    return new Fittings(
        labels.stream().map(l -> new Label(l.panel() + by, l.asked(), l.up())).toList(),
        all.stream().map(f -> f.numbered(p -> p + by)).toList());
  }

  /** What goes in and on these panels, where they are the only ones. */
  public Fittings only(List<Integer> panels) {
    return new Fittings(
        labels.stream()
            .filter(l -> panels.contains(l.panel()))
            .map(l -> new Label(panels.indexOf(l.panel()), l.asked(), l.up()))
            .toList(),
        all.stream()
            .filter(f -> panels.containsAll(f.panels()))
            .map(f -> f.numbered(panels::indexOf))
            .toList());
  }

  /** Every length that is asked for, in mm, in the order of the script. */
  public List<Double> sizes() {
    return Stream.concat(
            labels.stream().map(l -> l.asked().size()),
            all.stream()
                .flatMap(
                    f ->
                        switch (f.thing()) {
                          case Extra.Ribbon r -> Stream.of(r.length(), r.width());
                          case Extra.Light l -> Stream.of(l.across(), l.height());
                          case Extra.Filling filling ->
                              Stream.of(filling.across(), Math.cbrt(filling.volume()));
                          case Extra.Note _ -> Stream.<Double>empty();
                        }))
        .filter(size -> !Double.isNaN(size))
        .toList();
  }

  /** Whether every panel that is named is there. */
  public boolean nameWhatIsThere(int panels) {
    return Stream.concat(
            labels.stream().map(Label::panel),
            all.stream()
                .flatMap(
                    f ->
                        Stream.of(
                                f.panels(),
                                f.moment().panels(),
                                f.thing() instanceof Extra.Ribbon r
                                    ? r.through()
                                    : List.<Integer>of())
                            .flatMap(List::stream)))
        .allMatch(p -> p >= 0 && p < panels);
  }
}
