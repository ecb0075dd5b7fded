// expect RECURSION 2
const f = () => f();
f();
