// expect TIME|MEMORY 2
for (;;) { try { columns(1); } catch (e) {} }
