/** Keeps the question at hand once it is seen, so that it is on the screen at once when the page opens again. */
import { useEffect } from 'react';
import type { Drill } from '../../core/memory/drill.ts';
import { namesOf } from '../../core/questions/names.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Question } from '../../core/questions/question.ts';
import type { Unit } from '../../core/unit/unit.ts';
import { useServices } from '../services.ts';
import { whenPainted } from '../when-painted.ts';
import type { Noted } from './use-noted.ts';

/** Below the question, as it is answered. */
const FOOT = ['drill.check', 'drill.check-waiting', 'app.loading'];

export function useKeeping(
  unit: Unit | undefined,
  question: Question,
  { id, index, verdict }: Drill,
  { say, said }: Noted,
): void {
  const { store, build, language } = useServices();
  const isOpen = verdict === null;
  useEffect(() => {
    if (!unit || !isOpen) return;
    const names = namesOf(unit.deck);
    const keep = async () => {
      await whenPainted();
      for (const key of FOOT) say(phrase(key));
      await store.keepAtHand({ build, language, drill: id, index, question, said, names });
    };
    // Without it the next start takes a little longer, no more.
    void keep().catch(() => {});
  }, [unit, question, say, said, id, index, isOpen, build, language, store]);
}
