package facetwright.workbench.notice;

import facetwright.workbench.focus.WayBack;
import facetwright.workbench.key.Key;
import facetwright.workbench.look.Tip;
import java.util.Optional;
import javafx.application.Platform;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/**
 * The notice that shows, as a band across the window that covers nothing. Esc chooses what changes
 * nothing. One that is awaited takes the keyboard, and Enter chooses what is usual; one that comes
 * by itself leaves the keyboard where it is, and no key that is typed elsewhere answers it.
 */
public final class NoticePane extends HBox {
  private static final double GAP = 8;

  /** The part of the width that words take at least beside what can be chosen; else it is below. */
  private static final double WORDS = 0.45;

  private final Notices notices;
  private final Runnable otherwise;
  private final WayBack back = new WayBack();
  private Optional<Shown> layout = Optional.empty();

  /**
   * @param otherwise gives the focus a place, where it cannot go back to where it was
   */
  public NoticePane(Notices notices, Runnable otherwise) {
    this.notices = notices;
    this.otherwise = otherwise;
    getStylesheets().add(NoticePane.class.getResource("notice.css").toExternalForm());
    getStyleClass().add("notice");
    setAlignment(Pos.CENTER_LEFT);
    managedProperty().bind(visibleProperty());
    setVisible(false);
    // As high as its words need, however they break.
    setMinHeight(USE_PREF_SIZE);
    back.watch(this);
    notices.now().addListener((_, _, notice) -> show(notice));
    setOnKeyPressed(Key.AWAY.then(notices::putAway));
  }

  private void show(Notice notice) {
    if (notice == null) {
      back.go(this, otherwise);
      setVisible(false);
      layout = Optional.empty();
      getChildren().clear();
      return;
    }
    if (notice.isAwaited()) {
      back.remember(this);
    } else {
      back.go(this, otherwise);
    }
    Label title = new Label(notice.title());
    title.setWrapText(true);
    title.getStyleClass().add("notice-title");
    Label words = new Label(notice.words());
    words.setWrapText(true);
    words.setManaged(!notice.words().isEmpty());
    VBox said = new VBox(2, title, words);
    said.setAlignment(Pos.CENTER_LEFT);
    FlowPane choices = new FlowPane(GAP, GAP);
    choices.setAlignment(Pos.CENTER_RIGHT);
    Notice.Choice none = notice.choices().getLast();
    for (Notice.Choice choice : notice.choices()) {
      Button button = new Button(choice.name());
      button.setOnAction(_ -> notices.choose(choice));
      boolean first = notice.isAwaited() && choices.getChildren().isEmpty();
      String key =
          choice.equals(none)
              ? Key.AWAY.tip("")
              : first ? " (" + Key.PRESS.one() + ")" : " (" + Key.NEXT_PART.text() + " leads here)";
      button.setTooltip(new Tip(notice.title() + " " + choice.name() + key));
      button.setMinWidth(USE_PREF_SIZE);
      button.setAccessibleText(choice.name() + ". " + notice.title() + ". " + notice.words());
      choices.getChildren().add(button);
    }
    layout = Optional.of(new Shown(said, choices));
    getChildren().setAll(said, choices);
    setVisible(true);
    if (notice.isAwaited()) {
      Button usual = (Button) choices.getChildren().getFirst();
      usual.getStyleClass().add("usual");
      usual.setDefaultButton(true);
      Platform.runLater(usual::requestFocus);
    }
  }

  /**
   * What is shown.
   *
   * @param said the words
   * @param choices what can be chosen, at their right or below them
   */
  private record Shown(VBox said, FlowPane choices) {
    /** How wide the choices are in one line. */
    double line() {
      double all =
          choices.getChildren().stream().mapToDouble(b -> Math.ceil(b.prefWidth(-1))).sum();
      return all + GAP * (choices.getChildren().size() - 1);
    }

    /** How wide the words are. */
    double words(double free, double gap) {
      double beside = free - gap - line();
      return beside >= Math.min(said.prefWidth(-1), WORDS * free) ? beside : free;
    }

    double height(double free, double gap) {
      double words = words(free, gap);
      double high = said.prefHeight(words);
      return words < free
          ? Math.max(high, choices.prefHeight(line()))
          : high + GAP + choices.prefHeight(free);
    }

    void lay(double left, double top, double free, double gap) {
      double words = words(free, gap);
      double high = said.prefHeight(words);
      if (words < free) {
        double all = height(free, gap);
        said.resizeRelocate(left, top + (all - high) / 2, words, high);
        double wide = line();
        double deep = choices.prefHeight(wide);
        choices.resizeRelocate(left + free - wide, top + (all - deep) / 2, wide, deep);
      } else {
        said.resizeRelocate(left, top, free, high);
        choices.resizeRelocate(left, top + high + GAP, free, choices.prefHeight(free));
      }
    }
  }

  private double free(double width) {
    return Math.max(0, width - snappedLeftInset() - snappedRightInset());
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computePrefHeight(double width) {
    double free = free(width < 0 ? getWidth() : width);
    return Math.ceil(
        snappedTopInset()
            + snappedBottomInset()
            + layout.map(shown -> shown.height(free, getSpacing())).orElse(0.0));
  }

  @Override
  protected double computeMinWidth(double height) {
    return 0;
  }

  @Override
  protected void layoutChildren() {
    layout.ifPresent(
        shown -> shown.lay(snappedLeftInset(), snappedTopInset(), free(getWidth()), getSpacing()));
  }
}
