package facetwright.workbench.desk;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Map;
import java.util.Optional;

/** What was done to the dials, step by step, so that it can be taken back and done again. */
final class Turns {
  private final Deque<Step> before = new ArrayDeque<>();
  private final Deque<Step> after = new ArrayDeque<>();

  /**
   * One step.
   *
   * @param textFrom the script before it
   * @param textTo the script after it; the same where only dials were turned
   */
  record Step(Map<String, String> from, Map<String, String> to, String textFrom, String textTo) {
    /** Whether the script was changed with the dials. */
    boolean isWritten() {
      return !textFrom.equals(textTo);
    }

    private Step back() {
      return new Step(to, from, textTo, textFrom);
    }
  }

  void done(Step step) {
    before.push(step);
    after.clear();
  }

  void clear() {
    before.clear();
    after.clear();
  }

  /** The last step, turned about, to be followed; it can be done again. */
  Optional<Step> back() {
    Step step = before.poll();
    if (step == null) {
      return Optional.empty();
    }
    after.push(step);
    return Optional.of(step.back());
  }

  /** The step that was taken back, to be followed again. */
  Optional<Step> again() {
    Step step = after.poll();
    if (step == null) {
      return Optional.empty();
    }
    before.push(step);
    return Optional.of(step);
  }

  /**
   * The step that a change of the script takes back or does again, where it is one that changed the
   * script and the dials together; it is to be followed.
   */
  Optional<Step> with(String from, String to, Map<String, String> dials) {
    Step last = before.peek();
    if (last != null && last.isWritten() && isChange(last.back(), from, to, dials)) {
      return back();
    }
    Step next = after.peek();
    return next != null && next.isWritten() && isChange(next, from, to, dials)
        ? again()
        : Optional.empty();
  }

  private static boolean isChange(Step step, String from, String to, Map<String, String> dials) {
    return step.textFrom.equals(from) && step.textTo.equals(to) && step.from.equals(dials);
  }
}
