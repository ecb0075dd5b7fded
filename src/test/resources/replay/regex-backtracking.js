// expect TIME 2
/^(\w+\s?)*\1$/.test("a".repeat(42) + "!");
