// expect THROWN 2
Array.from({ length: 2 ** 31 });
