package facetwright.workbench.notice;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** The notices that wait, the first of which shows. For the window's thread. */
public final class Notices {
  private final List<Notice> waiting = new ArrayList<>();
  private final ReadOnlyObjectWrapper<Notice> now = new ReadOnlyObjectWrapper<>();

  /** The one that shows; null when there is none. */
  public ReadOnlyObjectProperty<Notice> now() {
    return now.getReadOnlyProperty();
  }

  /** Adds a notice, in place of one about the same; one that is awaited comes first. */
  public void show(Notice notice) {
    if (notice.isAwaited()) {
      waiting.removeIf(n -> n.about().equals(notice.about()));
      waiting.addFirst(notice);
      update();
      return;
    }
    for (int i = 0; i < waiting.size(); i++) {
      if (waiting.get(i).about().equals(notice.about())) {
        waiting.set(i, notice);
        update();
        return;
      }
    }
    waiting.add(notice);
    update();
  }

  /** Says something to be read and put away. */
  public void tell(String about, String title, String words) {
    show(Notice.telling(about, title, words));
  }

  /** Takes back what was said about something. */
  public void withdraw(String about) {
    waiting.removeIf(n -> n.about().equals(about));
    update();
  }

  /** Does what was chosen of the notice that shows, and puts the notice away. */
  public void choose(Notice.Choice choice) {
    if (!waiting.isEmpty() && waiting.getFirst().choices().contains(choice)) {
      waiting.removeFirst();
      update();
      choice.action().run();
    }
  }

  /** Chooses what changes nothing. */
  public void putAway() {
    if (now.get() != null) {
      choose(now.get().choices().getLast());
    }
  }

  private void update() {
    now.set(waiting.isEmpty() ? null : waiting.getFirst());
  }
}
