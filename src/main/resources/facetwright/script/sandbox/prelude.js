// Runs before every script, behind bounds.js and in one function with it. Takes away what would
// make a script depend on anything but its text and its dials.
const TrueError = Error;
const freeze = Object.freeze;
const TrueProxy = Proxy;

for (const name of [
  'Date', 'WeakRef', 'FinalizationRegistry', 'Proxy', 'ArrayBuffer', 'SharedArrayBuffer',
  'DataView', 'Atomics', 'Int8Array', 'Uint8Array', 'Uint8ClampedArray', 'Int16Array',
  'Uint16Array', 'Int32Array', 'Uint32Array', 'Float16Array', 'Float32Array', 'Float64Array',
  'BigInt64Array', 'BigUint64Array', 'eval', 'Intl', 'Temporal', 'Java', 'Packages', 'Polyglot',
  'Graal', 'java', 'javax', 'javafx', 'com', 'org', 'edu', 'load', 'loadWithNewGlobal', 'print',
  'printErr', 'console', 'quit', 'exit', 'read', 'readFully', 'readbuffer', 'readline',
  'setTimeout', 'setInterval', 'performance', 'WebAssembly', 'Worker', 'ShadowRealm',
]) {
  delete globalThis[name];
}

// The same numbers in every run: mulberry32, a public-domain generator by Tommy Ettinger.
let state = 0x2545f491;
const imul = Math.imul;
const random = ({
  random() {
    state = (state + 0x6d2b79f5) | 0;
    let t = imul(state ^ (state >>> 15), 1 | state);
    t = (t + imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  },
}).random;
define(Math, 'random', {value: random, writable: false, enumerable: false, configurable: false});

// Where a call stands is read from the engine's own stack. A script may neither change how that
// is written nor have code of its own run while it is.
for (const [name, value] of [['prepareStackTrace', undefined], ['stackTraceLimit', 10]]) {
  define(TrueError, name, {
    __proto__: null, value, writable: false, enumerable: false, configurable: false,
  });
}

// Called while the host is at work: nothing in here may run what a script can put in its place.
return {
  apply,
  stack: () => new TrueError().stack,
  fail: (message, fix) => {
    throw define(new TrueError(message), 'fix', {__proto__: null, value: fix});
  },
  // What a file offers is asked for by name; a name that it does not offer is no silent nothing.
  using: (checks, begin, end, lacks) => ({
    use(...values) {
      const name = apply(checks, undefined, values);
      const read = begin(name);
      if (typeof read !== 'function') {
        return read;
      }
      let offers = null;
      try {
        const own = freeze(read());
        offers = new TrueProxy(own, {
          __proto__: null,
          get: (_, key) =>
            key in own || typeof key !== 'string' || key === 'toJSON' ? own[key] : lacks(name, key),
        });
      } finally {
        end(name, offers);
      }
      return offers;
    },
  }).use,
};
