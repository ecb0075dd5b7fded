package facetwright.workbench.file;

import facetwright.workbench.desk.Desk;
import facetwright.workbench.notice.Notice;
import facetwright.workbench.notice.Notices;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;

/** One run of the program without a window: a desk that nobody evaluates for, and files. */
final class Sitting implements Choosing {
  final Notices notices = new Notices();
  final State state;
  final SafeKeeping keeping;
  final Desk desk = new Desk(_ -> new CompletableFuture<>(), Runnable::run);
  final Filing filing;
  final Deque<Path> answers = new ArrayDeque<>();
  final List<String> asked = new ArrayList<>();
  final HeldKeeper keeper = new HeldKeeper();
  final List<String> unkept = new ArrayList<>();
  final List<String> both = new ArrayList<>();

  Sitting(Path stateFolder, Path library) {
    state = State.in(stateFolder);
    filing = new Filing(desk, this, notices, state, library);
    filing.showBothWith((name, mine, theirs, _, _) -> both.addAll(List.of(name, mine, theirs)));
    keeping =
        new SafeKeeping(
            desk, filing, notices, stateFolder, keeper, trouble -> unkept.add(trouble.orElse("")));
  }

  /** What the notice that shows says. */
  String said() {
    return notices.now().get() == null ? "" : notices.now().get().title();
  }

  void choose(String name) {
    for (Notice.Choice choice : notices.now().get().choices()) {
      if (choice.name().equals(name)) {
        notices.choose(choice);
        return;
      }
    }
    throw new AssertionError("no choice " + name + " in " + notices.now().get());
  }

  /** The time until the next keeping passes. */
  void pass() {
    keeper.pass();
  }

  @Override
  public Optional<Path> toOpen(Path startingIn) {
    asked.add("open in " + startingIn);
    return Optional.ofNullable(answers.poll());
  }

  @Override
  public Optional<Path> toSave(Path startingIn, String name) {
    asked.add("save " + name);
    return Optional.ofNullable(answers.poll());
  }

  @Override
  public Optional<Path> folder(String title, Path startingIn) {
    asked.add(title);
    return Optional.ofNullable(answers.poll());
  }
}
