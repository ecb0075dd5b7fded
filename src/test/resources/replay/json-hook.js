// expect TIME 2
JSON.stringify({ toJSON() { for (;;); } });
