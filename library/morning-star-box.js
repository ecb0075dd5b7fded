/*
 * author: Tidewell Lantern Guild
 * licence: CC0-1.0
 * tags: box, lid, star, outline, show piece
 * notes: A star of five points to keep a keepsake in, with a lid of the same outline. The lid is set off by
 *   the card's thickness and a little play, so that it slides on.
 * setting: Sharp star = inner 0.42
 * setting: Flat = tall 1 in, lip 1/2 in
 */
design("Morning star box", { units: "in" });
sheet("A3", { weight: 240 });

const across = dial("across", "4 in", { from: "3 in", to: "4 1/2 in" });
const inner = dial("inner", 0.5, { from: 0.42, to: 0.6 });
const tall = dial("tall", "1 1/2 in", { from: "1 in", to: "2 in" });
const lip = dial("lip", "1/2 in", { from: "3/8 in", to: "3/4 in" });

const five = star({ points: 5, across, inner });
const box = prism({ outline: five, height: tall }).open("top").unfold({ part: "box" });
const skirt = five.offset("card");
prism({ outline: skirt, height: lip }).open("base").unfold({ part: "lid" }).over(box);
