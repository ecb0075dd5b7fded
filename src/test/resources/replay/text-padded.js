// expect THROWN 2
"x".padStart(2 ** 29);
