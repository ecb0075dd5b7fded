/*
 * author: Wenna Trevose, Tidewell
 * licence: CC0-1.0
 * tags: box, tuck, favour, beginner
 * notes: A favour box for sweets at the walk's end. Its lid tucks in behind the front over two dust flaps, and opens
 *   again by the thumb notch.
 * setting: For one sweet = wide 30, deep 30, tall 30, tuck 10
 * setting: Long = wide 90, deep 40, tall 45, tuck 16
 */
design("Watchman's favour box", { units: "mm" });

const wide = dial("wide", 60, { from: 30, to: 90 });
const deep = dial("deep", 40, { from: 30, to: 60 });
const tall = dial("tall", 45, { from: 30, to: 80 });
const tuck = dial("tuck", 14, { from: 10, to: 18 });

const favour = box({ width: wide, depth: deep, height: tall })
  .tuck("top", "side 1", { depth: tuck })
  .notch("side 1", { width: 16, depth: 8, shape: "round" })
  .unfold({ tab: 9 });
favour.filling("sweets in their wrappers", { across: 18 });

sheet("A3", { weight: 240 });
