// expect THROWN 2
"x".repeat(2 ** 29);
