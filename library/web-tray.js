/*
 * author: Mirren Oake, Tidewell
 * licence: CC0-1.0
 * tags: tray, sheet, webs, beginner
 * notes: A tray whose corners stay whole: they fold double and lie against the long walls, so that it holds
 *   crumbs and drips. No cut at all. Card is not made for food; line the tray.
 * setting: Square = wide 140, high 140
 * setting: Shallow = wall 15
 */
design("Web tray", { units: "mm" });

const wide = dial("wide", 160, { from: 120, to: 180 });
const high = dial("high", 120, { from: 110, to: 140 });
const wall = dial("wall", 25, { from: 15, to: 30 });

const tray = blank({ width: wide, height: high });
for (const from of ["bottom", "top", "left", "right"]) tray.score({ from, at: wall, fold: 90 });
for (const x of [0, wide]) {
  for (const y of [0, high]) {
    const [webX, webY] = [Math.abs(x - wall / 2), Math.abs(y - wall / 5)];
    tray.score({ points: [[x, y], [Math.abs(x - wall), Math.abs(y - wall)]], fold: 180, sense: "valley" });
    tray.fold([webX, webY], [wide / 2, webY], { fold: 180, sense: "mountain" });
    tray.lap([webX, webY], [wide / 2, Math.abs(y - wall / 2)]);
  }
}
tray.standOn([wide / 2, high / 2]).name([wide / 2, high / 2], "floor");

sheet("A4", { weight: 240 });
