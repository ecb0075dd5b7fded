// expect UNKNOWN_NAME 3
const n = 3;
colums(n);
