// expect MEMORY|TIME 5
const a = [];
const it = a.values();
a.length = 2 ** 32 - 1;
it.drop(4e9).next();
