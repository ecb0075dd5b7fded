/*
 * author: Aldous Finch, Tidewell
 * licence: CC0-1.0
 * tags: obelisk, prism, pyramid, several parts, show piece
 * notes: The marker on the quay, to stand on a shelf: two steps, a shaft that tapers and a point. Each is a
 *   piece of its own, glued on the one below. Weigh the base down with a little sand before it is closed.
 * setting: Small = foot 4 in, shaft 6 in
 * setting: Squat = shaft 5 in
 */
design("Tide marker", { units: "in" });

const foot = dial("foot", "5 in", { from: "4 in", to: "5 in" });
const step = dial("step", "1 in", { from: "3/4 in", to: "1 in" });
const tall = dial("shaft", "8 in", { from: "5 in", to: "9 in" });

const base = prism({ sides: 4, side: foot, height: step }).unfold({ part: "base" });
const tread = prism({ sides: 4, side: foot - step, height: step }).unfold({ part: "step" });
const narrow = (foot - 2 * step) / 2;
const shaft = frustum({ sides: 4, side: foot - 2 * step, top: narrow, height: tall }).unfold({ part: "shaft" });
const point = pyramid({ sides: 4, side: narrow, height: narrow }).unfold({ part: "point" });
tread.on(base);
shaft.on(tread);
point.on(shaft);

sheet("A2", { weight: 240 });
