/*
 * author: Tidewell Lantern Guild
 * licence: CC0-1.0
 * tags: lantern, wrap, gusset, walk, beginner
 * notes: The lantern every beginner makes for the winter walk. One strip of card, eight columns round;
 *   every second column is pinched to a point at both ends, and the tabs of the others fold over the
 *   openings. Thread a ribbon through the holes and hang a battery light inside; never a flame.
 * setting: Six-sided = sides 6, side 32, wall 60
 * setting: Tall and slim = sides 8, side 24, wall 70
 * setting: Many-sided = sides 12, side 22, wall 58
 */
design("Harbour lantern", { units: "mm" });

const sides = dial("sides", 8, { from: 6, to: 12, step: 2 });
const side = dial("side", 28, { from: 20, to: 32 });
const wall = dial("wall", 60, { from: 45, to: 70 });
const deep = sides > 6 ? side : side * 0.6; // Over a triangle deeper rim tabs would stick out.
const body = wrap({ columns: sides, width: side, rows: [deep, wall, wall, deep], seam: 12 });
body.columns("even").rows("rim").remove();
body.columns("even").rows("wall").gusset();
body.columns("odd").rows("rim").tabs({ hole: 3 });
body.columns("odd").rows("wall").layer({ reveal: 1.5, paper: "wave paper" });

// Before the top is closed: thirty centimetres of ribbon through its holes, and the light.
body.ribbon({ length: 300, width: 6, through: "row 4" });
body.light({ across: side * (sides > 6 ? 1.2 : 1), height: 38 });

sheet("A3", { weight: 220 });
