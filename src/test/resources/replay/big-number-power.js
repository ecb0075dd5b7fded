// expect SYNTAX 2
2n ** (2n ** 30n);
