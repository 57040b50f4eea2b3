/**
 * The line above every page of a shared device: who practises, and the way back to the names. It watches for idle
 * time, says so half a minute before, and leaves. Nothing has to be stored then: every tap was.
 */
import { useEffect, useRef, useState } from 'react';
import { dateOfDay, localDay } from '../../core/memory/day.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { KnownLearner, Registry } from '../../storage/learners/registry.ts';
import { useServices } from '../services.ts';
import './learners.css';

const WARNING_MS = 30_000;
const LOOKS_EVERY_MS = 1000;
const TOUCHES = ['pointerdown', 'pointermove', 'keydown', 'wheel', 'scroll', 'input', 'focusin'] as const;

interface Props {
  readonly learner: KnownLearner;
  readonly registry: Registry;
  /** Picked just now: the line is where reading goes on. */
  readonly justPicked: boolean;
  /** Null: never left by itself. */
  readonly idleMinutes: number | null;
  /** Told now and then when the page was last touched. */
  readonly onTouched: (at: number) => void;
  readonly onLeave: (reason: 'idle' | null) => void;
}

/**
 * Whether it is about to be left. Time goes by the clock, so that a page that slept in a closed tablet is left at
 * once; a clock set back is made up for by the browser's own count.
 */
function useIdle({
  idleMinutes,
  onTouched,
  onLeave,
}: Omit<Props, 'learner' | 'registry' | 'justPicked'>): boolean {
  const { now } = useServices();
  const [warned, setWarned] = useState(false);
  const latest = useRef({ now, onTouched, onLeave });
  latest.current = { now, onTouched, onLeave };
  useEffect(() => {
    if (idleMinutes === null) return;
    const limit = idleMinutes * 60_000;
    const read = () => ({ clock: latest.current.now().at, count: performance.now() });
    let touched = read();
    let noted = touched.clock;
    latest.current.onTouched(noted);
    let left = false;
    const idleMs = () => {
      const here = read();
      return Math.max(here.clock - touched.clock, here.count - touched.count);
    };
    const look = () => {
      if (left) return;
      const idle = idleMs();
      setWarned(idle >= limit - WARNING_MS);
      if (idle < limit) return;
      left = true;
      latest.current.onLeave('idle');
    };
    const onTouch = () => {
      // A page that comes back after too long is left, not revived by the touch that woke it.
      if (idleMs() >= limit) return look();
      touched = read();
      setWarned(false);
      if (touched.clock - noted < 5000) return;
      noted = touched.clock;
      latest.current.onTouched(noted);
    };
    const looking = setInterval(look, LOOKS_EVERY_MS);
    document.addEventListener('visibilitychange', look);
    for (const touch of TOUCHES) window.addEventListener(touch, onTouch, { capture: true, passive: true });
    return () => {
      clearInterval(looking);
      document.removeEventListener('visibilitychange', look);
      for (const touch of TOUCHES) window.removeEventListener(touch, onTouch, { capture: true });
    };
  }, [idleMinutes]);
  return warned;
}

export function WhoBar(props: Props) {
  const { learner, registry, justPicked, onLeave } = props;
  const line = useRef<HTMLSpanElement>(null);
  useEffect(() => {
    if (justPicked) line.current?.focus();
  }, [justPicked]);
  const { now, sayFor } = useServices();
  const say = sayFor(null);
  const warned = useIdle(props);
  return (
    <section aria-label={say(phrase('who.here'))} className={`who-bar no-print${warned ? ' warned' : ''}`}>
      <p className="who-line">
        <span ref={line} tabIndex={-1}>
          {say(phrase('who.as', { name: learner.name }))}
        </span>
        <button type="button" className="button plain" onClick={() => onLeave(null)}>
          {say(phrase('who.leave'))}
        </button>
      </p>
      <div role="alert">
        {warned && (
          <p className="who-line">
            <span>{say(phrase('who.still-there', { seconds: WARNING_MS / 1000, name: learner.name }))}</span>
            <button type="button" className="button key">
              {say(phrase('who.stay'))}
            </button>
          </p>
        )}
      </div>
      {learner.pinOffAt !== null && (
        <p className="who-line note" role="status">
          <span>
            {say(phrase('who.pin-off', { date: dateOfDay(localDay(learner.pinOffAt, now().zone)) }))}
          </span>
          <button type="button" className="button" onClick={() => void registry.noteToldOfPin(learner.id)}>
            {say(phrase('who.pin-off-read'))}
          </button>
        </p>
      )}
    </section>
  );
}
