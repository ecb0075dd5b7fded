/*
 * author: Hob Larkin, Tidewell
 * licence: CC0-1.0
 * tags: box, drawer, sleeve, panel by panel, favour
 * notes: A drawer in a sleeve, for twine, beads or a letter. The thumb notch is in front.
 * setting: Letter drawer = wide 5 in, deep 3 1/2 in, tall 1 in
 * setting: Small = wide 2 1/2 in, deep 2 in, tall 3/4 in
 */
design("Ropewalk drawer", { units: "in" });
sheet("A3", { weight: 240 });

const wide = dial("wide", "4 in", { from: "2 1/2 in", to: "5 in" });
const deep = dial("deep", "3 in", { from: "2 in", to: "3 1/2 in" });
const tall = dial("tall", "1 in", { from: "3/4 in", to: "1 1/4 in" });

const floor = panel("floor", { width: wide, height: deep });
const walls = ["bottom", "right", "top", "left"].map((edge) => floor.attach(edge, edge, { depth: tall, fold: 90 }));
walls[0].notch("top", { at: wide / 2, width: 1, depth: tall / 2, shape: "round" });
for (const [k, wall] of walls.entries()) wall.join("left", walls[(k + 1) % 4], "right", { depth: tall * 0.4 });

const round = rectangle({ width: wide, height: tall }).offset("card");
const sleeve = prism({ outline: round, height: deep }).open(["base", "top"]).unfold({ part: "sleeve" });
sleeve.over(floor.part("drawer"));
