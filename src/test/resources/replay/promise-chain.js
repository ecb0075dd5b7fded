// expect TIME|MEMORY 2
const p = () => Promise.resolve().then(p);
p();
