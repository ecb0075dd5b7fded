// expect THROWN 2
"a".repeat(1e5).replaceAll("a", "b".repeat(1e5));
