// expect THROWN 3
async function f() {
  throw new TypeError("hm");
}
f();
