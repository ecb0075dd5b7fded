package facetwright.script.api;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.form.Facet;
import facetwright.form.Form;
import facetwright.form.FormException;
import facetwright.form.change.Chamfer;
import facetwright.form.change.PlaneCut;
import facetwright.form.change.Reshape;
import facetwright.form.change.Stacking;
import facetwright.form.make.Solids;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The words by which a script means facets, over every form and every change of it. */
class FacetNamingTest {
  private static final double ACROSS = 30;

  private static Form form(Random random, int sides) {
    double tall = 30 + random.nextInt(40);
    return switch (random.nextInt(8)) {
      case 0 -> Solids.prism(sides, ACROSS, tall);
      case 1 -> Solids.frustum(sides, ACROSS, ACROSS - 12, tall);
      case 2 -> Solids.antiprism(sides, ACROSS, tall);
      case 3 -> Solids.pyramid(sides, ACROSS, tall);
      case 4 -> Solids.bipyramid(sides, ACROSS, tall);
      case 5 -> Solids.box(ACROSS, ACROSS, tall);
      case 6 ->
          Solids.turned(
              List.of(
                  new Vec2(10, 0), new Vec2(ACROSS, 20), new Vec2(ACROSS, tall), new Vec2(20, 80)),
              sides);
      default -> Solids.hull(hull(random));
    };
  }

  private static List<Vec3> hull(Random random) {
    return Stream.generate(
            () -> new Vec3(random.nextInt(60), random.nextInt(60), random.nextInt(60)))
        .limit(9)
        .toList();
  }

  private static Set<String> names(Form form) {
    return form.facets().stream().map(Facet::name).collect(Collectors.toCollection(HashSet::new));
  }

  private static Set<String> meant(Form form, String word) {
    return new HashSet<>(FacetNaming.of(form, List.of(word), "test"));
  }

  /** Every word that a facet answers to, without its quotes. */
  private static List<String> words(Form form, String facet) {
    return FacetNaming.words(form).apply(facet).words().stream()
        .map(w -> w.substring(1, w.length() - 1))
        .toList();
  }

  /**
   * Each facet's first word means it alone, and each further one it and more than the one before.
   */
  private static void answers(Form form, List<String> story) {
    for (Facet facet : form.facets()) {
      List<String> words = words(form, facet.name());
      assertThat(meant(form, words.getFirst())).as(story + "").containsExactly(facet.name());
      Set<String> before = Set.of(facet.name());
      for (String word : words.subList(1, words.size())) {
        Set<String> now = meant(form, word);
        assertThat(now).as(story + " " + word).containsAll(before).isNotEqualTo(before);
        before = now;
      }
      if (form.facets().size() > 1) {
        assertThat(meant(form, words.getLast())).isEqualTo(names(form));
      }
    }
  }

  /** The words of all facets mean the same after a change, but for what each was made into. */
  @ParameterizedTest
  @ValueSource(longs = {11, 12, 13, 14})
  void wordsLiveOnInRandomChains(long seed) {
    Random random = new Random(seed);
    for (int run = 0; run < 16; run++) {
      int sides = 3 + random.nextInt(6);
      Form form = form(random, sides);
      List<String> story = new ArrayList<>(List.of(names(form).toString()));
      answers(form, story);
      for (int step = 0; step < 4; step++) {
        try {
          form = changed(form, random, sides, story);
        } catch (FormException refused) {
          // The change can't be made of this form; another is tried.
        }
      }
    }
  }

  private static Form changed(Form form, Random random, int sides, List<String> story) {
    Form next;
    switch (random.nextInt(5)) {
      case 0 -> {
        String facet = form.facets().get(random.nextInt(form.facets().size())).name();
        next = form.changed(Reshape.raised(facet, 3 + random.nextInt(6)));
        story.add("raise " + facet);
        Set<String> made = names(next);
        made.removeAll(names(form));
        for (String word : allWords(form)) {
          Set<String> then = meant(form, word);
          if (then.remove(facet)) {
            then.addAll(made);
          }
          assertThat(meant(next, word)).as(story + " " + word).isEqualTo(then);
        }
      }
      case 1 -> {
        double by = 5 + random.nextInt(12);
        next = form.changed(Reshape.twisted(by));
        story.add("twist " + by);
        Set<String> old = names(form);
        for (String word : allWords(form)) {
          Set<String> then = meant(form, word);
          Set<String> expected =
              names(next).stream()
                  .filter(n -> then.contains(old.contains(n) ? n : n.substring(0, n.length() - 2)))
                  .collect(Collectors.toSet());
          assertThat(meant(next, word)).as(story + " " + word).isEqualTo(expected);
        }
      }
      case 2 -> {
        Vec3 on = new Vec3(0, 0, form.bounds().high().z() * (0.5 + random.nextDouble() / 3));
        next = form.changed(PlaneCut.under(on, new Vec3(random.nextDouble(), 0, 2)));
        story.add("cut at " + on.z());
        for (String word : allWords(form)) {
          Set<String> then = meant(form, word);
          then.retainAll(names(next));
          if (!then.isEmpty()) {
            assertThat(meant(next, word)).as(story + " " + word).containsAll(then);
          }
        }
        assertThat(names(next)).anyMatch(n -> n.startsWith("cut"));
      }
      case 3 -> {
        next = form.changed(Chamfer.corners(2));
        story.add("bevel");
        for (String word : allWords(form)) {
          assertThat(meant(next, word)).as(story + " " + word).containsAll(meant(form, word));
        }
      }
      default -> {
        next = form.changed(Stacking.with(Solids.prism(sides, ACROSS, 20)));
        story.add("stack");
        for (String word : allWords(form)) {
          Set<String> then = meant(form, word);
          then.remove("top");
          if (!then.isEmpty()) {
            assertThat(meant(next, word)).as(story + " " + word).containsAll(then);
          }
        }
      }
    }
    answers(next, story);
    return next;
  }

  private static Set<String> allWords(Form form) {
    return form.facets().stream()
        .flatMap(f -> words(form, f.name()).stream())
        .collect(Collectors.toSet());
  }

  /** Two forms on each other have two first sides: the upper keeps a number of its own. */
  @Test
  void stackedFormsAreToldApart() {
    Form tower = Solids.prism(5, ACROSS, 20).changed(Stacking.with(Solids.prism(5, ACROSS, 30)));
    assertThat(meant(tower, "side 1")).containsExactly("side 1");
    assertThat(meant(tower, "side 1 (2)")).containsExactly("side 1 (2)");
    assertThat(meant(tower, "side")).hasSize(10);
    assertThat(words(tower, "side 1 (2)")).containsExactly("side 1 (2)", "side", "all");
  }

  @Test
  void aNameOfTheMakersOwnMeansThatFacetAlone() {
    Form house = Solids.box(40, 40, 40).withName("side 1", "front").withName("side 2", "front 1");
    assertThat(meant(house, "front")).containsExactly("front");
    assertThat(meant(house, "side")).containsExactlyInAnyOrder("side 3", "side 4");
  }
}
