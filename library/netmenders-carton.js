/*
 * author: Jory Penhale, Tidewell
 * licence: CC0-1.0
 * tags: carton, tuck, hook, beginner
 * notes: A carton for twine and needles that needs no glue and lies flat in a drawer between two winters. Push the two
 *   hooks at the back corner into each other's cut, tuck in the foot, fill it, and tuck in the top.
 * setting: Twine = wide 60, deep 60, tall 70
 * setting: Needles = wide 50, deep 40, tall 110
 */
design("Net mender's carton", { units: "mm" });

const wide = dial("wide", 60, { from: 45, to: 65 });
const deep = dial("deep", 45, { from: 40, to: 60 });
const tall = dial("tall", 80, { from: 60, to: 110 });

box({ width: wide, depth: deep, height: tall })
  .hook("side 3", "side 4", { depth: 12 })
  .tuck("top", "side 1", { depth: 15 })
  .tuck("base", "side 1", { depth: 15 })
  .unfold();

sheet("A3", { weight: 240 });
