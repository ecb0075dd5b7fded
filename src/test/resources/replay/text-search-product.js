// expect THROWN 2
"a".repeat(1e5).indexOf("a".repeat(5e4) + "b");
