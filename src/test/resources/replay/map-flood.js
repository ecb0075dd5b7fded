// expect MEMORY|TIME 4
const m = new Map();
let i = 0;
for (;;) m.set(i++, {});
