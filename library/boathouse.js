/*
 * author: Aldous Finch, Tidewell
 * licence: CC0-1.0
 * tags: house, window, lantern, panel by panel
 * notes: A boathouse with lit windows, built panel by panel. Each long wall carries half of the roof, so
 *   the halves meet at the ridge. Back the windows with thin yellow paper; battery lights only.
 */
design("Boathouse", { units: "mm" });

const long = dial("long", 70, { from: 55, to: 80 });
const wide = dial("wide", 46, { from: 40, to: 56 });
const wall = dial("wall", 36, { from: 32, to: 44 });
const pitch = dial("pitch", 42, { from: 30, to: 50 });

const slope = (pitch * Math.PI) / 180;
const rise = (Math.tan(slope) * wide) / 2;
const rafter = wide / 2 / Math.cos(slope);

const floor = panel("floor", { width: long, height: wide });

// Long walls stand on the floor's long edges; each one's roof half turns inward by what the pitch leaves.
const front = floor.attach("bottom", "front", { depth: wall, fold: 90 });
const back = floor.attach("top", "back", { depth: wall, fold: 90 });
const near = front.attach("top", "near roof", { depth: rafter, fold: 90 - pitch });
const far = back.attach("top", "far roof", { depth: rafter, fold: 90 - pitch });

// Gables are five-sided: up to the eaves, then to the ridge.
const gable = [[0, 0], [wide, 0], [wide, wall], [wide / 2, wall + rise], [0, wall]];
const left = floor.attach("left", "left gable", { corners: gable, fold: 90 });
const right = floor.attach("right", "right gable", { corners: gable, fold: 90 });

for (const w of [front, back]) {
  w.window({ width: 12, height: 14, at: [-long / 4, 2] }).window({ width: 12, height: 14, at: [long / 4, 2] });
}
left.window({ sides: 8, across: 16 });
right.window({ width: 16, height: 22, at: [0, -6] });

// An edge is named as seen with its panel's hinge at the bottom, so the front wall's right end is where
// the left gable stands.
near.join("top", far, "top", { depth: 8 });
left.join("2", back, "left", { depth: 7 }).join("5", front, "right", { depth: 7 });
left.join("3", far, "left", { depth: 7 }).join("4", near, "right", { depth: 7 });
right.join("2", front, "left", { depth: 7 }).join("5", back, "right", { depth: 7 });
right.join("3", near, "left", { depth: 7 }).join("4", far, "right", { depth: 7 });

sheet("A3", { weight: 240 });
