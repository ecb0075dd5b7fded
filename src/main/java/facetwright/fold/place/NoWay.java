package facetwright.fold.place;

import facetwright.message.Message;
import facetwright.net.Net;

/** It can't go there. */
final class NoWay extends Exception {
  private static final long serialVersionUID = 1L;

  private final Message why;
  private final Message remedy;

  NoWay(Message why, Message remedy) {
    super(null, null, false, false);
    this.why = why;
    this.remedy = remedy;
  }

  Message why() {
    return why;
  }

  Message remedy() {
    return remedy;
  }

  static NoWay ofSeveral(Net net, int part) {
    return new NoWay(
        Message.of("%s is of several bodies that nothing joins", Way.name(net, part)),
        Message.text("Join them by tabs, or make each a part of its own."));
  }

  static NoWay ofGlued(Net net, int part) {
    return new NoWay(
        Message.of("%s is glued to what is no part of it", Way.name(net, part)),
        Message.text("Leave out the join, or make both one part: what is glued is one."));
  }
}
