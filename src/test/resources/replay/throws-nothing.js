// expect THROWN 2
throw undefined;
