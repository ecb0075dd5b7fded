// expect THROWN 4
const a = [];
a.length = 2 ** 32 - 1;
Math.max.apply(null, a);
