// expect TIME 2
[3, 1, 2].sort(() => { for (;;); });
