// expect RECURSION 2
function f() { say(1); f(); }
f();
