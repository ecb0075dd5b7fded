/*
 * author: Tidewell Lantern Guild
 * licence: CC0-1.0
 * tags: box, lid, favour, beginner
 * notes: A six-sided box with a lid that slides over it, for sweets in their wrappers after the walk.
 *   The lid is wider than the box by twice the slip, which its tabs take half of; with thick card give it more.
 * setting: For one sweet = side 3/4 in, tall 1 in, lip 3/8 in, slip 1/32 in
 * setting: Tall = side 1 1/4 in, tall 2 in, lip 3/4 in, slip 1/32 in
 */
design("Hex favour box", { units: "in" });

const side = dial("side", "1 1/4 in", { from: "3/4 in", to: "1 1/2 in" });
const tall = dial("tall", "1 1/2 in", { from: "1 in", to: "2 in" });
const lip = dial("lip", "1/2 in", { from: "3/8 in", to: "3/4 in" });
const slip = dial("slip", "1/32 in", { from: "1/32 in", to: "3/32 in" });

// The slip is measured square to the sides; across a corner of a hexagon it adds this much to a side.
const lidSide = side + slip * 2 * Math.tan(Math.PI / 6);

prism({ sides: 6, side, height: tall }).open("top").unfold({ as: "petals", tab: "3/8 in", part: "box" });
prism({ sides: 6, side: lidSide, height: lip }).open("top").unfold({ as: "petals", tab: lip * 0.4, part: "lid" });

sheet("Tabloid", { weight: 240 });
