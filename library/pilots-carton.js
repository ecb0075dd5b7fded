/*
 * author: Hob Larkin, Tidewell
 * licence: CC0-1.0
 * tags: carton, tuck, panel by panel, favour, steady hand
 * notes: A carton for a pack of playing cards or a string of tickets. Its lid tucks in behind the front and needs
 *   no glue; the thumb notch lets it be opened again.
 * setting: For tickets = wide 45, deep 25, tall 100
 * setting: Wide = wide 90, deep 25, tall 64
 */
design("Pilot's carton", { units: "mm" });

const wide = dial("wide", 64, { from: 45, to: 90 });
const deep = dial("deep", 22, { from: 18, to: 30 });
const tall = dial("tall", 90, { from: 60, to: 110 });

const front = panel("front", { width: wide, height: tall });
front.notch("top", { at: wide / 2, width: 16, depth: 8, shape: "round" });
const right = front.attach("right", "right", { depth: deep, fold: 90 });
const back = right.attach("top", "back", { depth: wide, fold: 90 });
const left = back.attach("top", "left", { depth: deep, fold: 90 });
left.join("top", front, "left", { on: "front", depth: 12 });
const lid = back.attach("left", "lid", { depth: deep, fold: 90 });
lid.tuck("top", front, { depth: 15 });
const floor = front.attach("bottom", "floor", { depth: deep, fold: 90 });
floor.join("top", back, "right", { depth: 12 });

sheet("A3", { weight: 240 });
