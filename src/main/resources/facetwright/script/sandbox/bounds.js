// Puts a bound on the built-in functions that can't be stopped once begun. Runs before every
// script, as the first part of one function of which prelude.js is the second.
const MOST_ITEMS = 1000000;
const MOST_LETTERS = 2000;
const MOST_WORK = 50000000;

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

// Puts a method in another's place. All else of it, such as that it is not listed, stays as it is.
const put = (owner, name, made) => {
  const old = owner[name];
  if (typeof old === 'function') {
    if (made.name !== old.name) {
      define(made, 'name', {value: old.name});
    }
    if (made.length !== old.length) {
      define(made, 'length', {value: old.length});
    }
    owner[name] = made;
  }
};
const replace = (owner, name, make) => put(owner, name, make(owner[name]));

const onList = (work, list, values) => {
  lengthOf(list);
  return apply(work, list, values);
};
const harmless = {
  __proto__: null, constructor: 0, length: 0, push: 0, pop: 0, at: 0, concat: 0, flat: 0, keys: 0,
  values: 0, entries: 0,
};
const ofList = {__proto__: null};
// What each is called and takes stands in its own text: it takes long to be told afterwards.
const onLists = {
  __proto__: null,
  copyWithin(target, start) { return onList(ofList.copyWithin, this, arguments); },
  every(test) { return onList(ofList.every, this, arguments); },
  fill(value) { return onList(ofList.fill, this, arguments); },
  filter(test) { return onList(ofList.filter, this, arguments); },
  find(test) { return onList(ofList.find, this, arguments); },
  findIndex(test) { return onList(ofList.findIndex, this, arguments); },
  findLast(test) { return onList(ofList.findLast, this, arguments); },
  findLastIndex(test) { return onList(ofList.findLastIndex, this, arguments); },
  flatMap(change) { return onList(ofList.flatMap, this, arguments); },
  forEach(work) { return onList(ofList.forEach, this, arguments); },
  includes(sought) { return onList(ofList.includes, this, arguments); },
  indexOf(sought) { return onList(ofList.indexOf, this, arguments); },
  join(between) { return onList(ofList.join, this, arguments); },
  lastIndexOf(sought) { return onList(ofList.lastIndexOf, this, arguments); },
  map(change) { return onList(ofList.map, this, arguments); },
  reduce(work) { return onList(ofList.reduce, this, arguments); },
  reduceRight(work) { return onList(ofList.reduceRight, this, arguments); },
  reverse() { return onList(ofList.reverse, this, arguments); },
  shift() { return onList(ofList.shift, this, arguments); },
  slice(start, end) { return onList(ofList.slice, this, arguments); },
  some(test) { return onList(ofList.some, this, arguments); },
  sort(order) { return onList(ofList.sort, this, arguments); },
  splice(start, count) { return onList(ofList.splice, this, arguments); },
  toLocaleString() { return onList(ofList.toLocaleString, this, arguments); },
  toReversed() { return onList(ofList.toReversed, this, arguments); },
  toSorted(order) { return onList(ofList.toSorted, this, arguments); },
  toSpliced(start, count) { return onList(ofList.toSpliced, this, arguments); },
  toString() { return onList(ofList.toString, this, arguments); },
  unshift(item) { return onList(ofList.unshift, this, arguments); },
  with(index, value) { return onList(ofList.with, this, arguments); },
};
for (const name of namesOf(Array.prototype)) {
  if (!(name in harmless)) {
    const work = Array.prototype[name];
    ofList[name] = work;
    put(Array.prototype, name, onLists[name] ?? ({
      method(...values) {
        return onList(work, this, values);
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

const ofText = {__proto__: null};
// What lasts by the length of a text.
const onShort = (name, self, values) => {
  if (self === null || self === undefined) {
    throw new TrueTypeError(name + ' needs a text');
  }
  const text = toText(self);
  if (text.length > MOST_LETTERS) {
    throw new TrueRangeError(name + ' takes a text of up to ' + MOST_LETTERS + ' letters');
  }
  return apply(ofText[name], text, values);
};
// Looking for a long text in a long text takes time by the product of their lengths.
const onTwo = (name, self, values) => {
  const text = typeof self === 'string' ? self : toText(self);
  const sought = values[0];
  const given = values[1];
  if (typeof sought === 'string' && sought.length * text.length > MOST_WORK) {
    throw new TrueRangeError(name + ' takes a shorter text');
  }
  if ((name === 'replace' || name === 'replaceAll') && typeof given === 'string') {
    const times = name === 'replace' && typeof sought === 'string' ? 1 : text.length + 1;
    let each = given.length;
    for (let i = 0; i < given.length; i++) {
      each += given[i] === '$' ? text.length : 0;
    }
    if (times * each > MOST_WORK) {
      throw new TrueRangeError(name + ' takes a shorter text');
    }
  }
  return apply(ofText[name], text, values);
};
const onTexts = {
  __proto__: null,
  toLowerCase() { return onShort('toLowerCase', this, arguments); },
  toUpperCase() { return onShort('toUpperCase', this, arguments); },
  toLocaleLowerCase() { return onShort('toLocaleLowerCase', this, arguments); },
  toLocaleUpperCase() { return onShort('toLocaleUpperCase', this, arguments); },
  normalize() { return onShort('normalize', this, arguments); },
  localeCompare(other) { return onShort('localeCompare', this, arguments); },
  indexOf(sought) { return onTwo('indexOf', this, arguments); },
  lastIndexOf(sought) { return onTwo('lastIndexOf', this, arguments); },
  includes(sought) { return onTwo('includes', this, arguments); },
  split(between, most) { return onTwo('split', this, arguments); },
  replace(sought, given) { return onTwo('replace', this, arguments); },
  replaceAll(sought, given) { return onTwo('replaceAll', this, arguments); },
};
for (const name in onTexts) {
  ofText[name] = String.prototype[name];
  put(String.prototype, name, onTexts[name]);
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
