/**
 * fsrs-rs, the memory model's implementation in Rust, through its npm build 0.5.0. That version is published
 * for Linux on x64 with glibc only; elsewhere `Rust` is null and the states it gave (rust-states.json) stand in.
 */
import { createRequire } from 'node:module';

export interface RustState {
  readonly stability: number;
  readonly difficulty: number;
}

interface RustStates {
  readonly again: { readonly memory: RustState };
  readonly good: { readonly memory: RustState };
}

type RustModel = new (
  weights: number[],
) => { nextStates(state: RustState | null, retention: number, days: number): RustStates };

function load(): RustModel | null {
  try {
    return createRequire(import.meta.url)('@open-spaced-repetition/binding-linux-x64-gnu').FSRSBinding;
  } catch {
    return null;
  }
}

export const Rust = load();
