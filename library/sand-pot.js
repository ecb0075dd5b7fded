/*
 * author: Mirren Oake, Tidewell
 * licence: CC0-1.0
 * tags: pot, frustum, box, measure
 * notes: A pot for the sand that weighs a lantern down on a windy quay. It holds an eighth of a litre,
 *   however many sides you give it and however wide they are: its height is found for that. Set the
 *   height yourself and it stays as you set it.
 */
design("Sand pot", { units: "mm" });

const sides = dial("sides", 6, { from: 5, to: 7, step: 1 });
const side = dial("side", 27, { from: 25, to: 30 });
const tall = dial("tall", 60, { from: 30, to: 95 });
aim({ volume: "125 ml", turn: "tall" });

frustum({ sides, side, top: side * 1.25, height: tall }).open("top").unfold({ tab: 8 });

sheet("A3", { weight: 240 });
