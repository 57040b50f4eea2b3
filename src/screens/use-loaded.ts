/** Loads once per key; undefined until there. A failure is thrown where the screen renders, to be shown. */
import { useEffect, useState } from 'react';

export function useLoaded<T>(load: () => Promise<T>, key: string): T | undefined {
  const [state, setState] = useState<{ key: string; value?: T; error?: unknown }>();
  // biome-ignore lint/correctness/useExhaustiveDependencies: the key says when to load again
  useEffect(() => {
    let wanted = true;
    load().then(
      (value) => wanted && setState({ key, value }),
      (error) => wanted && setState({ key, error }),
    );
    return () => {
      wanted = false;
    };
  }, [key]);
  if (state?.error !== undefined) throw state.error;
  return state?.key === key ? state.value : undefined;
}
