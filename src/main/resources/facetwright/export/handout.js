(function () {
  "use strict";
  const view = document.getElementById("view");
  const slider = document.getElementById("open");
  const NS = "http://www.w3.org/2000/svg";
  const EPS = 0.05;
  let turn = -63 * Math.PI / 180, tilt = 24 * Math.PI / 180, t = 1;
  const dot = (a, b) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  const cross = (a, b) => [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
  const unit = a => { const l = Math.hypot(a[0], a[1], a[2]) || 1; return [a[0] / l, a[1] / l, a[2] / l]; };
  const mix = (a, b, f) => a.map((x, i) => x + (b[i] - x) * f);

  function poses() {
    const at = t * (folded.ways.length - 1), i = Math.min(Math.floor(at), folded.ways.length - 2), f = at - i;
    return folded.ways[i].map((m, p) => {
      const n = folded.ways[i + 1][p];
      return { ex: unit(mix(m[0], n[0], f)), ey: unit(mix(m[1], n[1], f)), o: mix(m[2], n[2], f) };
    });
  }
  const place = (m, c) => [0, 1, 2].map(k => m.ex[k] * c[0] + m.ey[k] * c[1] + m.o[k]);
  const svg = document.createElementNS(NS, "svg");
  const groups = folded.panels.map(() => {
    const g = document.createElementNS(NS, "g");
    const card = document.createElementNS(NS, "path"), layer = document.createElementNS(NS, "path");
    card.setAttribute("stroke", "#2B2A28");
    card.setAttribute("stroke-linejoin", "round");
    card.setAttribute("vector-effect", "non-scaling-stroke");
    for (const p of [card, layer]) { p.setAttribute("fill-rule", "evenodd"); g.appendChild(p); }
    return { g, card, layer };
  });

  /** Where points lie to a plane: 1 all before it, -1 all behind, 0 in it, 2 on both sides. */
  function side(points, plane) {
    let over = false, under = false;
    for (const p of points) {
      const d = dot(plane.n, p) - plane.d;
      if (d > EPS) over = true;
      if (-EPS > d) under = true;
    }
    return over ? (under ? 2 : 1) : under ? -1 : 0;
  }

  /** 1 where a hides b, -1 where b hides a, 0 where it does not matter. */
  function hides(a, b) {
    if (a.box[0] >= b.box[2] - 1e-3 || b.box[0] >= a.box[2] - 1e-3 || a.box[1] >= b.box[3] - 1e-3 || b.box[1] >= a.box[3] - 1e-3) return 0;
    const s = side(a.points, b.plane);
    if (s === 1 || s === -1) return s;
    if (s === 0) return a.under === b.under ? 0 : (a.under ? -1 : 1) * (a.outside ? 1 : -1);
    const r = side(b.points, a.plane);
    if (r === 1 || r === -1) return -r;
    return a.depth > b.depth ? 1 : -1;
  }

  /** Farthest first; where panels hide each other in a ring, the farthest of them goes first. */
  function sorted(faces) {
    const before = faces.map(() => new Set());
    for (let i = 0; i !== faces.length; i++) {
      for (let j = 0; j !== i; j++) {
        const h = hides(faces[i], faces[j]);
        if (h === 1) before[i].add(j);
        if (h === -1) before[j].add(i);
      }
    }
    const left = new Set(faces.keys()), order = [];
    while (left.size) {
      let best = -1;
      for (const i of left) {
        if (best === -1 || before[best].size > before[i].size || (before[i].size === before[best].size && faces[best].depth > faces[i].depth)) best = i;
      }
      left.delete(best);
      order.push(faces[best]);
      for (const i of left) before[i].delete(best);
    }
    return order;
  }

  function draw() {
    const c = Math.cos(tilt), s = Math.sin(tilt);
    const toward = [c * Math.cos(turn), c * Math.sin(turn), s];
    const right = [-Math.sin(turn), Math.cos(turn), 0];
    const up = [-s * Math.cos(turn), -s * Math.sin(turn), c];
    const light = unit([0, 1, 2].map(k => -0.45 * right[k] + 0.65 * up[k] + 0.61 * toward[k]));
    const now = poses(), faces = [];
    let low = [1e9, 1e9, 1e9], high = [-1e9, -1e9, -1e9];
    folded.panels.forEach((panel, i) => {
      const m = now[i], points = panel.rings[0].map(p => place(m, p));
      for (const p of points) {
        low = low.map((x, k) => Math.min(x, p[k]));
        high = high.map((x, k) => Math.max(x, p[k]));
      }
      let n = unit(cross(m.ex, m.ey));
      const outside = dot(n, toward) > 0;
      if (!outside) n = n.map(x => -x);
      const flat = p => [dot(right, p), -dot(up, p)];
      const seen = points.map(flat), xs = seen.map(p => p[0]), ys = seen.map(p => p[1]);
      const path = rings => rings.map(r => "M" + r.map(q => flat(place(m, q)).map(x => x.toFixed(2)).join(",")).join("L") + "Z").join("");
      faces.push({
        i, points, outside, under: panel.under, plane: { n, d: dot(n, points[0]) },
        depth: points.reduce((sum, p) => sum + dot(toward, p), 0) / points.length,
        box: [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)],
        bright: 0.74 + 0.26 * Math.max(0, dot(n, light)),
        card: path(panel.rings), layer: outside ? path(panel.layer) : ""
      });
    });
    const ink = (rgb, bright) => "rgb(" + rgb.map(x => Math.round(x * bright)).join(",") + ")";
    for (const f of sorted(faces)) {
      const e = groups[f.i];
      e.card.setAttribute("d", f.card);
      e.card.setAttribute("fill", ink(f.outside ? [252, 250, 245] : [221, 211, 190], f.bright));
      e.layer.setAttribute("d", f.layer);
      e.layer.setAttribute("fill", ink([241, 217, 201], f.bright));
      svg.appendChild(e.g);
    }
    const mid = low.map((x, k) => (x + high[k]) / 2);
    const r = 1.04 * Math.hypot(high[0] - low[0], high[1] - low[1], high[2] - low[2]) / 2;
    svg.setAttribute("viewBox", [dot(right, mid) - r, -dot(up, mid) - r, 2 * r, 2 * r].map(x => x.toFixed(2)).join(" "));
    view.setAttribute("aria-label", view.dataset.told.replace("#", Math.round(100 * t)));
  }
  function turned(by, down) {
    turn += by;
    tilt = Math.max(-Math.PI / 2, Math.min(Math.PI / 2, tilt + down));
    draw();
  }
  let last = null;
  view.addEventListener("pointerdown", e => { last = [e.clientX, e.clientY]; view.setPointerCapture(e.pointerId); });
  view.addEventListener("pointermove", e => {
    if (last === null) return;
    turned((last[0] - e.clientX) * 0.01, (e.clientY - last[1]) * 0.01);
    last = [e.clientX, e.clientY];
  });
  for (const end of ["pointerup", "pointercancel"]) view.addEventListener(end, () => { last = null; });
  view.addEventListener("keydown", e => {
    const steps = { ArrowLeft: [0.1, 0], ArrowRight: [-0.1, 0], ArrowUp: [0, 0.1], ArrowDown: [0, -0.1] };
    if (e.key in steps) { e.preventDefault(); turned(...steps[e.key]); }
  });
  slider.addEventListener("input", () => { t = slider.value / 100; draw(); });
  draw();
  view.replaceChildren(svg);
  view.tabIndex = 0;
  document.getElementById("controls").hidden = false;
}());
