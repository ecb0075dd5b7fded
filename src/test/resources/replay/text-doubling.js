// expect THROWN 3
let s = "x";
for (;;) s += s;
