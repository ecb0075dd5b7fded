// expect THROWN 2
Array.prototype.indexOf.call({ length: 2 ** 53 }, 1);
