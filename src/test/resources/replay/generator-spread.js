// expect MEMORY|TIME 2
function* g() { for (;;) yield 1; }
const a = [...g()];
