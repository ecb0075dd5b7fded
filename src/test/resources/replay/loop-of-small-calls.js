// expect TIME 2
for (;;) say(1);
