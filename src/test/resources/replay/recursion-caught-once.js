// expect ok
function f() { try { f(); } catch (e) {} }
f();
say("on");
