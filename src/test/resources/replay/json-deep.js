// expect THROWN|RECURSION 2
JSON.parse("[".repeat(50000));
