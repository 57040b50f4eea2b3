/** Types that let the compiler compare two shapes, field by field. */

/** Compiles only when every argument is `true`; otherwise the compiler prints what it got instead. */
export type Agreed<A extends true, B extends true, C extends true, D extends true> = [A, B, C, D];

export type DeepReadonly<T> = T extends readonly unknown[] | object
  ? { readonly [K in keyof T]: DeepReadonly<T[K]> }
  : T;

/** Every field of a shape as a path, lists stepped through: "train.gearsets.sun.teeth". */
export type KeyPath<T> = T extends readonly (infer Item)[]
  ? KeyPath<Item>
  : T extends object
    ? {
        [K in keyof T & string]-?: K | `${K}.${KeyPath<Exclude<T[K], undefined>>}`;
      }[keyof T & string]
    : never;
