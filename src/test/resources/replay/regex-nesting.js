// expect TIME|THROWN|MEMORY|RECURSION|SYNTAX 2
new RegExp("(".repeat(30000) + ")".repeat(30000));
