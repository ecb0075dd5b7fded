package facetwright.net.panel;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Ask;
import facetwright.net.NetException;
import facetwright.net.draft.EdgeDraft;
import facetwright.net.draft.NetDraft;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * A named edge of a panel, which stays one edge to its maker when it is divided. One measures along
 * it from left to right, looking from outside with the edge at the bottom of what is attached.
 */
public final class CardEdge {
  private static final double FINE = LengthTolerance.FINE.mm();

  private final NetDraft net;
  private final String name;
  private final Segment2 whole;
  private final List<EdgeDraft> parts = new ArrayList<>();

  CardEdge(NetDraft net, String name, EdgeDraft edge) {
    this.net = net;
    this.name = name;
    this.whole = edge.segment();
    parts.add(edge);
  }

  /** As it was made, its panel on its left. */
  Segment2 whole() {
    return whole;
  }

  /** Its length as it was made, in mm. */
  double length() {
    return whole.length();
  }

  /** How it is called in messages: the edge and its panel. */
  String name() {
    return name;
  }

  List<EdgeDraft> parts() {
    return List.copyOf(parts);
  }

  /** How far from the left end the part begins and ends. */
  double begin(EdgeDraft part) {
    return whole.to().distance(part.to());
  }

  double end(EdgeDraft part) {
    return whole.to().distance(part.from());
  }

  /** The longest part that is neither scored nor slit. */
  EdgeDraft longestFree(Site site) {
    EdgeDraft best = null;
    for (EdgeDraft part : parts) {
      if (net.isFree(part) && (best == null || part.length() > best.length() + FINE)) {
        best = part;
      }
    }
    Ask.that(
        best != null, () -> Message.of("%s is taken%s: use another edge", name, takenBy()), site);
    return best;
  }

  /** What holds to it: " by "lid""; or nothing where it is cut away. */
  private String takenBy() {
    return parts.stream()
        .map(net::across)
        .filter(Objects::nonNull)
        .map(e -> " by \"" + e.panel().name() + "\"")
        .distinct()
        .collect(Collectors.joining(" and"));
  }

  /** Divides the edge so that one free part runs from {@code begin} to {@code end}. */
  EdgeDraft isolate(double begin, double end, Site site) {
    for (EdgeDraft part : parts) {
      if (net.isFree(part) && begin(part) <= begin + FINE && end <= end(part) + FINE) {
        return cutOut(part, begin, end);
      }
    }
    throw new NetException(
        Message.of(
            "%s is not free from %s to %s: it is %s long, and what is attached or cut may not meet;"
                + " %s",
            name, Value.limit(begin), Value.limit(end), Value.limit(length()), room(end - begin)),
        site);
  }

  /** Where so long a stretch finds room, or how long the longest is that does. */
  private Message room(double wanted) {
    List<EdgeDraft> free = parts.stream().filter(net::isFree).toList();
    if (free.isEmpty()) {
      return Message.text("nothing of it is free");
    }
    List<EdgeDraft> fitting = free.stream().filter(p -> p.length() >= wanted - FINE).toList();
    EdgeDraft longest =
        free.stream().max(Comparator.comparingDouble(EdgeDraft::length)).orElseThrow();
    return Message.join(
        " and ",
        (fitting.isEmpty() ? List.of(longest) : fitting)
            .stream()
                .map(
                    p ->
                        Message.of(
                            fitting.isEmpty()
                                ? "the longest free stretch runs from %s to %s"
                                : "there is room from %s to %s",
                            Value.atLeast(begin(p)),
                            Value.atMost(end(p))))
                .toList());
  }

  /** The part that meets another edge's part: as it is, or divided where it is free. */
  EdgeDraft meeting(double begin, double end, Site site) {
    for (EdgeDraft part : parts) {
      if (Math.abs(begin(part) - begin) <= FINE && Math.abs(end(part) - end) <= FINE) {
        return part;
      }
    }
    return isolate(begin, end, site);
  }

  private EdgeDraft cutOut(EdgeDraft part, double begin, double end) {
    EdgeDraft wanted = part;
    if (begin > begin(wanted) + FINE) {
      split(wanted, begin);
    }
    return end < end(wanted) - FINE ? split(wanted, end) : wanted;
  }

  /** Divides a part; it keeps its right share, the returned one is the left. */
  private EdgeDraft split(EdgeDraft part, double at) {
    Vec2 point = whole.to().toward(whole.from(), at / length());
    EdgeDraft rest = part.panel().split(part, point);
    parts.add(parts.indexOf(part) + 1, rest);
    return rest;
  }

  /** A part that is no longer straight stops being part of the edge. */
  void forget(EdgeDraft part) {
    parts.remove(part);
  }
}
