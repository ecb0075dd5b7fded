/*
 * author: Morwen Tallack, Tidewell
 * licence: CC0-1.0
 * tags: lantern, tongue, window, winter walk, folds flat
 * notes: A shade that is carried flat in a coat pocket and closed on the quay: a flap of its last side runs behind the
 *   first, and the tongue at its end comes out through a cut there. Stand it over a battery light; never a flame.
 * setting: Low = sides 6, side 45, tall 70
 * setting: Slender = sides 5, side 40, tall 130
 */
design("Pocket lantern", { units: "mm" });

const sides = dial("sides", 6, { from: 4, to: 8, whole: true });
const side = dial("side", 42, { from: 36, to: 50 });
const tall = dial("tall", 100, { from: 60, to: 130 });

prism({ sides, side, height: tall })
  .open(["base", "top"])
  .window("side", { width: side * 0.3, height: tall * 0.55 })
  .tongue("side " + sides, "side 1", { inset: 7, depth: 5, width: tall / 4 })
  .unfold({ as: "strip" });

sheet("A3", { weight: 200 });
