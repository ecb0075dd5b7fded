/*
 * author: Mirren Oake, Tidewell
 * licence: CC0-1.0
 * tags: tower, twist, lantern
 * notes: A tower whose top is turned against its foot, each side in two triangles. The old light on the
 *   mole looks like this from the ferry.
 * setting: Hardly turned = sides 6, radius 26, tall 90, turn 8
 * setting: Square and tall = sides 4, radius 26, tall 110, turn 25
 */
design("Twisted tower", { units: "mm" });

const sides = dial("sides", 6, { from: 4, to: 8, step: 1 });
const radius = dial("radius", 26, { from: 20, to: 30 });
const tall = dial("tall", 90, { from: 60, to: 110 });
const turn = dial("turn", 20, { from: 5, to: 30 });

prism({ sides, radius, height: tall }).twist(turn).unfold({ tab: 7 });

sheet("A3", { weight: 220 });
