// expect INTERNAL 2
try { broken(); } catch (e) {}
say("on");
