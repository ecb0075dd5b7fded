// expect MEMORY|TIME 4
const a = [];
a.length = 2 ** 32 - 1;
new Set(a);
