/*
 * author: Mirren Oake, Tidewell
 * licence: CC0-1.0
 * tags: drum, antiprism, lantern
 * notes: A drum with a zigzag of triangles for its side and a window in every other place for the
 *   light. Battery lights only.
 */
design("Fog drum", { units: "mm" });

const sides = dial("sides", 6, { from: 4, to: 8, step: 1 });
const side = dial("side", 36, { from: 30, to: 40 });
const tall = dial("tall", 44, { from: 36, to: 56 });

const drum = antiprism({ sides, side, height: tall }).window("top", { sides, across: side * 0.9 });
drum.unfold({ as: "strip", tab: 8 }).light({ across: side, height: tall / 2 });

sheet("A3", { weight: 220 });
