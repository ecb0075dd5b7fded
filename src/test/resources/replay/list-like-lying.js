// expect THROWN 2
Array.prototype.slice.call({ get length() { return 2 ** 40; } });
