/*
 * author: Aldous Finch, Tidewell
 * licence: CC0-1.0
 * tags: to use
 * notes: Corners of forms that are built on the golden ratio, about their middle, for skin. Edges are
 *   plain numbers in the design's unit.
 */
// The longer part of a line to the shorter where that is as the whole to the longer.
const phi = (1 + Math.sqrt(5)) / 2;

// Every point with the signs of its measures changed, and its measures passed round.
function turnedRound([x, y, z]) {
  const points = [];
  for (const a of x ? [-x, x] : [0]) {
    for (const b of y ? [-y, y] : [0]) {
      for (const c of z ? [-z, z] : [0]) points.push([a, b, c], [b, c, a], [c, a, b]);
    }
  }
  return points;
}

function sized(points, factor) {
  return points.map((p) => p.map((v) => v * factor));
}

// Twelve corners, twenty facets of three sides: three golden rectangles, crossed.
function icosahedron(edge) {
  return sized(turnedRound([0, 1, phi]), edge / 2);
}

// Twenty corners, twelve facets of five sides: a cube, and three golden rectangles.
function dodecahedron(edge) {
  const cube = [];
  for (const x of [-1, 1]) for (const y of [-1, 1]) for (const z of [-1, 1]) cube.push([x, y, z]);
  return sized([...cube, ...turnedRound([0, 1 / phi, phi])], (edge * phi) / 2);
}

// Thirty corners, twelve facets of five sides and twenty of three.
function icosidodecahedron(edge) {
  const axes = [-phi, phi].flatMap((v) => [[v, 0, 0], [0, v, 0], [0, 0, v]]);
  return sized([...axes, ...turnedRound([1 / 2, phi / 2, (phi * phi) / 2])], edge);
}
