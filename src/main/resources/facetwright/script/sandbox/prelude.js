// Runs before every script. Takes away what would make a script depend on anything but its text
// and its dials, and puts a bound on the built-in functions that can't be stopped once begun.
(() => {
  'use strict';
  const MOST_ITEMS = 1000000;
  const MOST_LETTERS = 2000;
  const MOST_WORK = 50000000;

  const TrueError = Error;
  const TrueRangeError = RangeError;
  const TrueTypeError = TypeError;
  const apply = Reflect.apply;
  const construct = Reflect.construct;
  const define = Object.defineProperty;
  const describe = Object.getOwnPropertyDescriptor;
  const namesOf = Object.getOwnPropertyNames;
  const isArray = Array.isArray;
  const ITERATOR = Symbol.iterator;
  const SPREADABLE = Symbol.isConcatSpreadable;
  const toText = String;
  const toNumber = Number;
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

  // How long a list-like thing is. Its length must stand in the thing itself: a length that is
  // worked out when asked for could give another answer the next time.
  const lengthOf = (list) => {
    if (list === null || list === undefined) {
      return 0;
    }
    if (typeof list !== 'object' && typeof list !== 'function') {
      return typeof list === 'string' ? list.length : 0;
    }
    if (typeof list === 'function') {
      return 0;
    }
    if (isArray(list)) {
      if (list.length > MOST_ITEMS) {
        throw new TrueRangeError('a list may have up to ' + MOST_ITEMS + ' items');
      }
      return list.length;
    }
    const own = describe(list, 'length');
    if (own === undefined) {
      if ('length' in list) {
        throw new TrueTypeError('this is not a list');
      }
      return 0;
    }
    if (typeof own.value !== 'number') {
      throw new TrueTypeError('the length of a list must be a number');
    }
    if (own.value > MOST_ITEMS) {
      throw new TrueRangeError('a list may have up to ' + MOST_ITEMS + ' items');
    }
    return own.value > 0 ? own.value : 0;
  };

  const replace = (owner, name, make) => {
    const old = describe(owner, name);
    if (old !== undefined && typeof old.value === 'function') {
      const made = make(old.value);
      define(made, 'name', {value: old.value.name});
      if (made.length !== old.value.length) {
        define(made, 'length', {value: old.value.length});
      }
      // All else of it, such as that it is not listed, stays as it is.
      define(owner, name, {value: made});
    }
  };

  const harmless = ['constructor', 'push', 'pop', 'at', 'concat', 'flat', 'keys', 'values', 'entries'];
  for (const name of namesOf(Array.prototype)) {
    if (!harmless.includes(name)) {
      replace(Array.prototype, name, (old) => ({
        method(...values) {
          lengthOf(this);
          return apply(old, this, values);
        },
      }).method);
    }
  }
  replace(Array.prototype, 'concat', (old) => ({
    method(...values) {
      lengthOf(this);
      for (let i = 0; i < values.length; i++) {
        const item = values[i];
        if (isArray(item)) {
          lengthOf(item);
        } else if (item !== null && typeof item === 'object' && item[SPREADABLE]) {
          throw new TrueTypeError('only a list can be joined to a list');
        }
      }
      return apply(old, this, values);
    },
  }).method);
  replace(Array.prototype, 'flat', () => ({
    method(depth = 1) {
      const out = [];
      const pour = (list, deep) => {
        const count = lengthOf(list);
        for (let i = 0; i < count; i++) {
          if (i in list) {
            if (deep >= 1 && isArray(list[i])) {
              pour(list[i], deep - 1);
            } else {
              define(out, out.length, {
                value: list[i], writable: true, enumerable: true, configurable: true,
              });
            }
          }
        }
      };
      pour(this, toNumber(depth));
      return out;
    },
  }).method);
  replace(Array, 'from', () => ({
    method(items, change, self) {
      const out = [];
      const add = (item) => {
        define(out, out.length, {
          value: change === undefined ? item : apply(change, self, [item, out.length]),
          writable: true, enumerable: true, configurable: true,
        });
      };
      if (change !== undefined && typeof change !== 'function') {
        throw new TrueTypeError('the second argument of Array.from must be a function');
      }
      if (items === null || items === undefined) {
        throw new TrueTypeError('Array.from needs a list');
      }
      if (items[ITERATOR] !== undefined && items[ITERATOR] !== null) {
        for (const item of items) {
          add(item);
        }
      } else {
        const count = lengthOf(items);
        for (let i = 0; i + 1 <= count; i++) {
          add(items[i]);
        }
      }
      return out;
    },
  }).method);
  delete Array.fromAsync;

  const ListMaker = Array;
  const limited = function Array(...values) {
    if (values.length === 1 && typeof values[0] === 'number' && values[0] > MOST_ITEMS) {
      throw new TrueRangeError('a list may have up to ' + MOST_ITEMS + ' items');
    }
    return new.target === undefined || new.target === limited
      ? apply(ListMaker, undefined, values)
      : construct(ListMaker, values, new.target);
  };
  for (const name of namesOf(ListMaker)) {
    if (name !== 'name' && name !== 'length') {
      define(limited, name, describe(ListMaker, name));
    }
  }
  define(limited, Symbol.species, describe(ListMaker, Symbol.species));
  define(ListMaker.prototype, 'constructor', {
    value: limited, writable: true, enumerable: false, configurable: true,
  });
  define(globalThis, 'Array', {
    value: limited, writable: true, enumerable: false, configurable: true,
  });

  const withList = (owner, name, index) => replace(owner, name, (old) => ({
    method(...values) {
      lengthOf(values[index]);
      return apply(old, this, values);
    },
  }).method);
  withList(Function.prototype, 'apply', 1);
  withList(Reflect, 'apply', 2);
  withList(Reflect, 'construct', 1);

  for (const name of [
    'toLowerCase', 'toUpperCase', 'toLocaleLowerCase', 'toLocaleUpperCase', 'normalize',
    'localeCompare',
  ]) {
    replace(String.prototype, name, (old) => ({
      method(...values) {
        if (this === null || this === undefined) {
          throw new TrueTypeError(name + ' needs a text');
        }
        const text = toText(this);
        if (text.length > MOST_LETTERS) {
          throw new TrueRangeError(name + ' takes a text of up to ' + MOST_LETTERS + ' letters');
        }
        return apply(old, text, values);
      },
    }).method);
  }
  // Looking for a long text in a long text takes time by the product of their lengths.
  for (const name of ['indexOf', 'lastIndexOf', 'includes', 'split', 'replace', 'replaceAll']) {
    replace(String.prototype, name, (old) => ({
      method(...values) {
        const text = typeof this === 'string' ? this : toText(this);
        const sought = values[0];
        const put = values[1];
        if (typeof sought === 'string' && sought.length * text.length > MOST_WORK) {
          throw new TrueRangeError(name + ' takes a shorter text');
        }
        if ((name === 'replace' || name === 'replaceAll') && typeof put === 'string') {
          const times = name === 'replace' && typeof sought === 'string' ? 1 : text.length + 1;
          let each = put.length;
          for (let i = 0; i < put.length; i++) {
            each += put[i] === '$' ? text.length : 0;
          }
          if (times * each > MOST_WORK) {
            throw new TrueRangeError(name + ' takes a shorter text');
          }
        }
        return apply(old, text, values);
      },
    }).method);
  }
  replace(String, 'raw', () => ({
    method(pieces, ...values) {
      const raw = pieces.raw;
      const count = lengthOf(raw);
      let out = '';
      for (let i = 0; i < count; i++) {
        out += toText(raw[i]);
        if (i + 1 < count && i < values.length) {
          out += toText(values[i]);
        }
      }
      return out;
    },
  }).method);

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
})()
