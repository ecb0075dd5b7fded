/*
 * author: Tidewell Lantern Guild
 * licence: CC0-1.0
 * tags: card, pop-out, sheet, beginner, first fold
 * notes: A card that opens to a flight of steps. Two slits, and scores across between them; score the whole card before
 *   you fold, then push the steps out from behind, the lowest first.
 * setting: Two broad steps = steps 2, reach 1 1/2 in
 * setting: Five steps = steps 5, reach 2 1/2 in
 */
design("Quay stairs", { units: "in" });

const wide = dial("wide", "5 in", { from: "4 in", to: "6 in" });
const middle = dial("half", "3 1/2 in", { from: "3 in", to: "4 in" });
const steps = dial("steps", 4, { from: 2, to: 6, whole: true });
const reach = dial("reach", "2 in", { from: "1 1/2 in", to: "2 1/2 in" });
const edge = dial("edge", "1 1/2 in", { from: "1 in", to: "1 3/4 in" });

const deep = reach / steps;
const card = blank({ width: wide, height: middle * 2 });
card.score({ from: "bottom", at: middle, fold: 90, sense: "valley" });
for (const from of ["left", "right"]) card.cut({ from, at: edge, between: [middle - reach, middle + reach] });
for (let k = -steps; k <= steps; k++) {
  const sense = (k + steps) % 2 ? "mountain" : "valley";
  if (k) card.score({ from: "bottom", at: middle + k * deep, between: [edge, wide - edge], fold: 90, sense });
  else card.fold([wide / 2, middle - deep / 2], [wide / 2, middle + deep / 2], { fold: 90, sense });
}

sheet("Letter", { weight: 220 });
