/*
 * author: Mirren Oake, Tidewell
 * licence: CC0-1.0
 * tags: box, lid, window, backing, lantern, steady hand
 * notes: A box of seven sides with vellum behind three of its windows and a lid with a beveled top. Put a
 *   battery light in and it glows; never a flame.
 * setting: Low = tall 1 1/2 in, side 1 in
 * setting: Wide border = border 5/16 in
 */
design("Chapel box", { units: "in" });
sheet("A3", { weight: 240 });

const side = dial("side", "1 in", { from: "3/4 in", to: "1 1/8 in" });
const tall = dial("tall", "2 in", { from: "1 1/2 in", to: "2 1/2 in" });
const border = dial("border", "1/4 in", { from: "1/4 in", to: "5/16 in" });

const seven = regular({ sides: 7, side });
const lit = ["side 1", "side 3", "side 5"];
const body = prism({ outline: seven, height: tall }).window(lit, { border }).backing(lit, { paper: "vellum" });
const box = body.open("top").unfold({ part: "box" });
box.light({ across: side * 1.25, height: side });
const skirt = seven.offset("card");
const bevel = frustum({ outline: skirt, top: skirt.offset("-1/4 in"), height: "1/2 in" });
prism({ outline: skirt, height: side / 2 }).stack(bevel).open("base").unfold({ as: "petals", part: "lid" }).over(box);
