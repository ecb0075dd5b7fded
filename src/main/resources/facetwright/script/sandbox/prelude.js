(() => {
  'use strict';
  const TrueError = Error;
  class BadCall extends TrueError {
    constructor(message, fix) {
      super(message);
      this.fix = fix;
    }
  }
  return {
    stack: () => new TrueError().stack,
    fail: (message, fix) => {
      throw new BadCall(message, fix);
    },
  };
})()
