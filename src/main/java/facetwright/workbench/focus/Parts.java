package facetwright.workbench.focus;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.WeakHashMap;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.Scene;

/** The parts of the window, from one to the next of which the focus leaps. */
public final class Parts {
  /**
   * One part.
   *
   * @param first where one comes to at first; what Tab reaches first in it, if that cannot take it
   * @param whole all of it
   */
  public record Part(Node first, List<Node> whole) {
    public Part {
      whole = List.copyOf(whole);
    }

    /** A part that one comes to at what Tab reaches first. */
    public static Part of(Node... whole) {
      return new Part(whole[0], List.of(whole));
    }

    private List<Node> reached() {
      return whole.stream().flatMap(node -> Reach.within(node).stream()).toList();
    }

    /** Whether a node is or lies in it. */
    public boolean has(Node node) {
      return whole.stream().anyMatch(each -> Reach.isIn(node, each));
    }
  }

  private final Supplier<List<Part>> parts;
  private final Map<Node, Node> last = new WeakHashMap<>();

  /**
   * @param parts those that show, in the order in which one reads them
   */
  public Parts(Supplier<List<Part>> parts) {
    this.parts = parts;
  }

  /** Goes to the next part, or the one before; from the last to the first. */
  public void go(Scene scene, boolean onward) {
    List<Part> open = new ArrayList<>(parts.get());
    open.removeIf(p -> p.reached().isEmpty());
    if (open.isEmpty()) {
      return;
    }
    Node now = scene.getFocusOwner();
    int at = -1;
    for (int i = 0; i < open.size(); i++) {
      if (open.get(i).has(now)) {
        at = i;
        last.put(open.get(i).first(), now);
      }
    }
    int to = onward ? at + 1 : (at < 0 ? 0 : at) - 1;
    Part part = open.get(Math.floorMod(to, open.size()));
    List<Node> reached = part.reached();
    Node before = last.get(part.first());
    Node first = reached.contains(part.first()) ? part.first() : reached.getFirst();
    (reached.contains(before) ? before : first).requestFocus();
  }
}
