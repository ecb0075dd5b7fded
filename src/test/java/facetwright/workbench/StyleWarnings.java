package facetwright.workbench;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;

/** Keeps what the toolkit warns about while it applies style sheets. */
final class StyleWarnings extends Handler {
  private static final Logger TOOLKIT = Logger.getLogger("javafx.css");

  private final List<String> said = new CopyOnWriteArrayList<>();

  void listen() {
    TOOLKIT.addHandler(this);
  }

  void leave() {
    TOOLKIT.removeHandler(this);
  }

  List<String> said() {
    return List.copyOf(said);
  }

  @Override
  public void publish(LogRecord each) {
    said.add(each.getMessage());
  }

  @Override
  public void flush() {}

  @Override
  public void close() {}
}
