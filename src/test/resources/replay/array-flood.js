// expect MEMORY|TIME 3
const a = [];
for (;;) a.push(new Array(1e5).fill(0));
