/*
 * author: Wenna Tregarth, Tidewell
 * licence: CC0-1.0
 * tags: box, lid, hinge, favour, beginner
 * notes: A low box for the baker's winter biscuits, its lid hinged at the back by a strip of the same card. The lid
 *   reaches only a little way down: the wall across from the hinge swings inward as it rises. Glue the strip with the
 *   lid shut. Card is not made for food; line it.
 * setting: Small = wide 80, deep 65, tall 30
 * setting: Long = wide 140, deep 70, tall 35
 */
design("Biscuit box", { units: "mm" });

const wide = dial("wide", 110, { from: 70, to: 140 });
const deep = dial("deep", 80, { from: 65, to: 90 });
const tall = dial("tall", 40, { from: 25, to: 50 });

sheet("A3", { weight: 240 });
const foot = rectangle({ width: wide, height: deep });
const box = prism({ outline: foot, height: tall }).open("top").unfold({ part: "box" });
const lid = prism({ outline: foot.offset("card"), height: 8 }).open("top").unfold({ part: "lid" });
lid.over(box, { hinged: "back", open: 70 });
