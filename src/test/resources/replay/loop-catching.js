// expect TIME|MEMORY 2
while (true) { try { throw 1; } catch (e) {} finally { continue; } }
