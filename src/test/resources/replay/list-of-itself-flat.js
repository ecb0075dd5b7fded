// expect RECURSION|TIME|MEMORY 4
const a = [];
a.push(a);
a.flat(Infinity);
