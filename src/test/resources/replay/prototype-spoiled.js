// expect ok
Object.prototype.fix = "x"; Array.prototype.map = null; Error.prototype.toString = null;
say("on");
