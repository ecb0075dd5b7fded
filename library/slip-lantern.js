/*
 * author: Morwen Tallack, Tidewell
 * licence: CC0-1.0
 * tags: lantern, panels, tongue, window, winter walk
 * notes: Four walls with windows stand on a base by tongues: each goes through its slot and is folded over underneath.
 *   The walls come off the base again to change the battery light. Never a flame.
 * setting: Low = wide 55, tall 60, shelf 12
 * setting: Tall = wide 65, tall 110, shelf 18
 */
design("Slip lantern", { units: "mm" });

const wide = dial("wide", 60, { from: 50, to: 70 });
const tall = dial("tall", 85, { from: 55, to: 115 });
const shelf = dial("shelf", 15, { from: 10, to: 20 });

const base = panel("base", { width: wide + 2 * shelf, height: wide + 2 * shelf });
const walls = [panel("wall 1", { width: wide, height: tall })];
for (let k = 2; k < 5; k++) {
  walls.push(walls.at(-1).attach(k === 2 ? "right" : "top", "wall " + k, { depth: wide, fold: 90 }));
}
walls[3].join("top", walls[0], "left", { depth: 8 });
walls.forEach((wall) => wall.window({ border: 12 }));
const feet = ["bottom", "right", "right", "right"];
const along = ["bottom", "left", "top", "right"];
walls.forEach((wall, k) => wall.tongue(feet[k], base, along[k], { inset: shelf, depth: 8 }));

sheet("A2", { weight: 240 });
