/*
 * author: Tidewell Lantern Guild
 * licence: CC0-1.0
 * tags: tray, sheet, beginner
 * notes: A tray for wrapped buns, drawn straight on the sheet: four scores right across, four slits,
 *   four corner tabs glued inside the long walls. Card is not made for food; line the tray.
 */
design("Supper tray", { units: "in" });

const width = dial("width", 9, { from: 7, to: 10, step: 0.25 });
const height = dial("height", 6, { from: 5, to: 7.5, step: 0.25 });
const wall = dial("wall", "1 1/4 in", { from: "3/4 in", to: "1 3/4 in" });

const tray = blank({ width, height });
for (const from of ["left", "right", "bottom", "top"]) tray.score({ from, at: wall, fold: 90 });

// Slits part the corner squares from the long walls; the squares become tabs of the short walls.
for (const from of ["left", "right"]) {
  tray.cut({ from, at: wall, between: [0, wall] }).cut({ from, at: wall, between: [height - wall, height] });
}
const half = wall / 2;
for (const x of [half, width - half]) {
  const inner = x < width / 2 ? wall * 1.01 : width - wall * 1.01;
  for (const y of [half, height - half]) {
    tray.role([x, y], "tab").join([x, height / 2], [inner, y], { tab: [x, y] });
  }
}
tray.standOn([width / 2, height / 2]).name([width / 2, height / 2], "floor");

sheet("Letter", { weight: 240 });
