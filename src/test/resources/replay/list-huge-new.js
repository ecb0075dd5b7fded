// expect THROWN 2
new Array(2 ** 32 - 1).fill(0);
