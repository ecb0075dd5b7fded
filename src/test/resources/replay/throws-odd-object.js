// expect THROWN 2
throw { get message() { throw 1; }, toString() { throw 2; } };
