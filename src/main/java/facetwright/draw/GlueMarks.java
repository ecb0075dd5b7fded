package facetwright.draw;

import facetwright.fold.making.Faces;
import facetwright.fold.making.GlueOrder;
import facetwright.fold.making.Numbers;
import facetwright.net.Join;
import facetwright.net.Net;
import java.util.HashMap;
import java.util.Map;

/**
 * What is known of gluing when it is known how a net folds.
 *
 * @param faces of what is glued the face that takes the glue; the outside where not said
 * @param numbers by which the words tell what is glued
 */
public record GlueMarks(Map<Integer, Faces.Face> faces, Numbers numbers) {
  /** Where it is not known how the net folds. */
  public static final GlueMarks NONE = new GlueMarks(Map.of(), Numbers.NONE);

  public GlueMarks {
    faces = Map.copyOf(faces);
  }

  public static GlueMarks of(GlueOrder order) {
    return new GlueMarks(order.faces(), order.numbers());
  }

  /** The faces alone, without numbers. */
  public static GlueMarks faces(GlueOrder order) {
    return new GlueMarks(order.faces(), Numbers.NONE);
  }

  /**
   * Of several copies of the net in one: the faces, without numbers, which would be many.
   *
   * @param copies how many, their panels one copy after another
   * @param panels how many one has
   */
  public GlueMarks of(int copies, int panels) {
    Map<Integer, Faces.Face> all = new HashMap<>();
    for (int i = 0; i < copies; i++) {
      int before = i * panels;
      faces.forEach((panel, face) -> all.put(before + panel, face));
    }
    return new GlueMarks(all, Numbers.NONE);
  }

  /** As one sees it from inside: what takes the glue on the one face takes it on the other. */
  public GlueMarks turnedOver(Net net) {
    Map<Integer, Faces.Face> all = new HashMap<>();
    for (int panel : Join.glued(net)) {
      all.put(
          panel,
          switch (face(panel)) {
            case OUTSIDE -> Faces.Face.INSIDE;
            case INSIDE -> Faces.Face.OUTSIDE;
            case NONE -> Faces.Face.NONE;
          });
    }
    return new GlueMarks(all, numbers);
  }

  Faces.Face face(int panel) {
    return faces.getOrDefault(panel, Faces.Face.OUTSIDE);
  }
}
