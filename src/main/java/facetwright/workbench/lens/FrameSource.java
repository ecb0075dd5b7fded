package facetwright.workbench.lens;

import facetwright.draw.FoldedDrawing;
import facetwright.fold.Folding;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.walk.FoldPath;
import facetwright.net.Net;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/**
 * Folded pictures, made beside the window's thread. Only the newest wish counts: while one picture
 * is in the making, those wished for in between are left out.
 */
final class FrameSource {
  private final Executor aside;
  private final Executor ui;
  private final Consumer<FoldedDrawing> show;

  // All below is touched by the window's thread only.
  private Wish wish;
  private boolean busy;
  private FoldPath path;
  private long pathOf;
  private long nets;

  private record Wish(long number, Net net, FoldedForm form, boolean layers, double made) {}

  FrameSource(Executor aside, Executor ui, Consumer<FoldedDrawing> show) {
    this.aside = aside;
    this.ui = ui;
    this.show = show;
  }

  void of(Net net, FoldedForm form, boolean layers, double made) {
    ask(new Wish(++nets, net, form, layers, made));
  }

  /** There is nothing to show any more. */
  void forget() {
    wish = null;
  }

  void at(double made) {
    if (wish != null) {
      ask(new Wish(wish.number, wish.net, wish.form, wish.layers, made));
    }
  }

  void layers(boolean on) {
    if (wish != null) {
      ask(new Wish(wish.number, wish.net, wish.form, on, wish.made));
    }
  }

  /** Tests watch by it. */
  boolean isAtRest() {
    return !busy;
  }

  private void ask(Wish next) {
    wish = next;
    if (!busy) {
      busy = true;
      make(next);
    }
  }

  private void make(Wish now) {
    FoldPath known = now.number == pathOf ? path : null;
    aside.execute(
        () -> {
          try {
            FoldPath way = known == null && now.made < 1 ? Folding.path(now.net) : known;
            FoldedDrawing drawing =
                new FoldedDrawing(
                    now.net, now.made < 1 ? way.at(now.made) : now.form.whole(), now.layers);
            ui.execute(() -> ready(now, way, drawing));
          } catch (RuntimeException | StackOverflowError e) {
            // The picture shown stays; the next wish is tried again.
            ui.execute(() -> busy = false);
            throw e;
          }
        });
  }

  private void ready(Wish was, FoldPath way, FoldedDrawing drawing) {
    path = way;
    pathOf = was.number;
    if (wish == null) {
      busy = false;
      return;
    }
    show.accept(drawing);
    if (was.number == wish.number && was.layers == wish.layers && was.made == wish.made) {
      busy = false;
    } else {
      make(wish);
    }
  }
}
