// expect MEMORY|TIME 2
"a".repeat(1e5).split("").map((x) => x.repeat(1e5).split(""));
