/*
 * author: Mirren Oake, Tidewell
 * licence: CC0-1.0
 * tags: bauble, bipyramid, hanging
 * notes: A long bauble of two points on one waist. Pierce the top point before gluing and draw a thread
 *   through it.
 */
design("Gull bauble", { units: "mm" });

const sides = dial("sides", 8, { from: 5, to: 10, step: 1 });
const waist = dial("waist", 21, { from: 16, to: 26 });
const tall = dial("tall", 96, { from: 70, to: 120 });

bipyramid({ sides, radius: waist, height: tall }).layer("all", { reveal: 1.5 }).unfold({ tab: 5 });

sheet("A4", { weight: 200 });
