package facetwright.draw.picture;

import facetwright.draw.GlueMarks;
import facetwright.draw.Mark;
import facetwright.draw.Viewpoint;
import facetwright.fold.making.Action;
import facetwright.fold.walk.FoldPath;
import facetwright.language.Telling;
import facetwright.net.Net;
import facetwright.net.fitting.Extra;
import facetwright.papers.handout.Making;
import facetwright.papers.handout.Picture;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Pictures of pieces between the actions of making them up; what they show is found once. */
final class MidwayPictures {
  private final Net net;
  private final List<Making> makings;
  private final GlueMarks gluing;
  private final Telling tell;
  private final Scenes scenes;
  private final Map<Integer, Story> stories = new HashMap<>();

  private final Map<List<Integer>, List<Mark.Patch>> seen = new HashMap<>();

  /** A making with the views of its scenes. */
  private record Story(List<Scene> scenes, List<Viewpoint> views) {}

  MidwayPictures(Net net, FoldPath path, List<Making> makings, GlueMarks gluing, Telling tell) {
    this.tell = tell;
    this.net = net;
    this.makings = makings;
    this.gluing = gluing;
    this.scenes = new Scenes(net, path, gluing);
  }

  private Story story(int making) {
    return stories.computeIfAbsent(
        making,
        m -> {
          List<Scene> all = scenes.of(makings.get(m));
          return new Story(all, Views.of(all));
        });
  }

  Scene scene(Picture.Midway picture) {
    return story(picture.making()).scenes().get(picture.at());
  }

  Viewpoint view(Picture.Midway picture) {
    return story(picture.making()).views().get(picture.at());
  }

  private Viewpoint before(Picture.Midway picture) {
    return picture.at() == 0
        ? Viewpoint.USUAL
        : story(picture.making()).views().get(picture.at() - 1);
  }

  Block block(Picture.Midway picture, double width, double height) {
    Scene scene = scene(picture);
    Optional<Extra> thing =
        scene.action().isPresent()
                && scene.action().get() instanceof Action.Fitted(int fitting, boolean _)
            ? Optional.of(net.fittings().all().get(fitting).thing())
            : Optional.empty();
    List<Mark.Patch> patches =
        seen.computeIfAbsent(
            List.of(picture.making(), picture.at()), _ -> scene.drawing().seen(view(picture)));
    return MidwayPicture.of(
        scene,
        patches,
        view(picture),
        before(picture),
        thing,
        gluing.numbers(),
        width,
        height,
        tell);
  }

  /** What is told of turning the piece, then what is done. */
  String words(Picture.Midway picture) {
    Viewpoint from = view(picture);
    Viewpoint before = before(picture);
    String turned =
        from.isOver() != before.isOver()
            ? from.isOver() ? "over" : "upright"
            : from.isTurnedFrom(before) ? "round" : "";
    return turned.isEmpty()
        ? picture.words()
        : tell.say("page.turn-piece", "way", turned) + " " + picture.words();
  }
}
