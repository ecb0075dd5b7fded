// expect TIME 2
for (;;) {}
