/*
 * author: Aldous Finch, Tidewell
 * licence: CC0-1.0
 * tags: gem, profile, bauble
 * notes: A gem drawn as a profile and turned about its axis: a point below, a girdle, a crown and a flat
 *   table on top.
 */
design("Cut gem", { units: "mm" });

const sides = dial("sides", 8, { from: 6, to: 12, step: 1 });
const girdle = dial("girdle", 34, { from: 26, to: 38 });
const depth = dial("depth", 42, { from: 32, to: 48 });
const crown = dial("crown", 14, { from: 10, to: 18 });

turned({
  sides,
  profile: [
    [0, 0],
    [girdle, depth],
    [girdle * 0.6, depth + crown],
  ],
}).unfold({ tab: 6 });

sheet("A3", { weight: 220 });
