package facetwright.net;

import java.util.Optional;

/** The panel of a net that has this name. */
public final class NamedPanel {
  private NamedPanel() {}

  public static Optional<Panel> of(Net net, String name) {
    return net.panels().stream().filter(p -> p.name().equals(name)).findFirst();
  }
}
