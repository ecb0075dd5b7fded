/*
 * author: Aldous Finch, Tidewell
 * licence: CC0-1.0
 * tags: dodecahedron, lantern, window
 * notes: Twelve five-sided facets, each with a window but the one it stands on. Back the windows with
 *   thin paper before gluing and set a battery light inside.
 */
design("Beacon dodecahedron", { units: "mm" });

const edge = dial("edge", 32, { from: 24, to: 36 });
const border = dial("border", 7, { from: 5, to: 9 });

// The twenty corners of a regular dodecahedron stand at the corners of a cube and on three golden
// rectangles; this one has edges of length 2 / phi.
const phi = (1 + Math.sqrt(5)) / 2;
const corners = [];
for (const x of [-1, 1]) {
  for (const y of [-1, 1]) {
    for (const z of [-1, 1]) corners.push([x, y, z]);
    corners.push([0, x / phi, y * phi], [x / phi, y * phi, 0], [x * phi, 0, y / phi]);
  }
}
const scale = (edge * phi) / 2;

let beacon = skin(corners.map((c) => c.map((v) => v * scale)));
for (let n = 2; n <= 12; n++) beacon = beacon.window("facet " + n, { border });
beacon.unfold({ tab: border * 0.9 }).light({ across: edge * 0.9, height: edge * 0.9 });

sheet("A3", { weight: 200 });
