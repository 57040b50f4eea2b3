/** A draft in work: its history, and every state of it stored as soon as the one before is on the disk. */
import { useEffect, useReducer, useRef, useState } from 'react';
import { applyEdit, type DeckDraft, type Edit } from '../../core/workshop/draft.ts';
import { endRun, type History, record, redo, startHistory, undo } from '../../core/workshop/history.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import type { StoredDraft } from '../../storage/workshop.ts';
import { useServices } from '../services.ts';

type Action =
  | { readonly kind: 'edit'; readonly edit: Edit; readonly run: string | null }
  | { readonly kind: 'replace'; readonly draft: DeckDraft; readonly run: string | null }
  | { readonly kind: 'end-run' | 'undo' | 'redo' };

function step(history: History<DeckDraft>, action: Action): History<DeckDraft> {
  switch (action.kind) {
    case 'edit':
      return record(history, applyEdit(history.present, action.edit), action.run);
    case 'replace':
      return record(history, action.draft, action.run);
    case 'end-run':
      return endRun(history);
    case 'undo':
      return undo(history);
    case 'redo':
      return redo(history);
  }
}

/** Saves the newest state, one at a time; states in between that nobody waits for are passed over. */
function useSaving(id: string, draft: DeckDraft) {
  const { store, now } = useServices();
  const [state, setState] = useState<'kept' | 'keeping' | StoreTrouble>('kept');
  const last = useRef(draft);
  const waiting = useRef<DeckDraft | null>(null);
  const busy = useRef(false);
  useEffect(() => {
    if (last.current === draft) return;
    last.current = draft;
    waiting.current = draft;
    if (busy.current) return;
    busy.current = true;
    setState('keeping');
    const save = async () => {
      for (let next = waiting.current; next; next = waiting.current) {
        waiting.current = null;
        const row: StoredDraft = {
          id,
          unit: String(next.unit ?? ''),
          text: JSON.stringify(next),
          savedAt: now().at,
        };
        const kept = await store.workshop.keep(row);
        setState(kept.ok ? 'kept' : kept.error);
      }
      busy.current = false;
    };
    void save();
  }, [id, draft, store, now]);
  return state;
}

export function useDraft(id: string, start: DeckDraft) {
  const [history, act] = useReducer(step, start, startHistory<DeckDraft>);
  const saving = useSaving(id, history.present);
  return { history, act, saving };
}

/** The value as it was `ms` ago, or when it last stood still. */
export function useSettled<T>(value: T, ms: number): T {
  const [settled, setSettled] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => setSettled(value), ms);
    return () => clearTimeout(timer);
  }, [value, ms]);
  return settled;
}
