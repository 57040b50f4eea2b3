/** A question's drawing, whose code comes with the first question that has one: not all have, and it is large. */
import { type ComponentProps, lazy, Suspense } from 'react';

const load = () => import('../../ui/drawings/DrawingView.tsx');

const DrawingView = lazy(async () => ({ default: (await load()).DrawingView }));

/** With this awaited, the drawing stands in the first picture of its question. */
export async function loadDrawings(): Promise<void> {
  await load();
}

export function DrawingLater(props: ComponentProps<typeof DrawingView>) {
  return (
    <Suspense fallback={null}>
      <DrawingView {...props} />
    </Suspense>
  );
}
