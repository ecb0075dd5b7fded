// expect THROWN 2
String.raw({ raw: { length: 2 ** 31 } });
