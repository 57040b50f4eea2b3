/** One deck in work: a section at a time, what the checks say above it, back and forth, and all of it stored. */
import { type KeyboardEvent, useMemo, useState } from 'react';
import { Link } from 'wouter';
import { checkDraft } from '../../content/draft.ts';
import { dateOfDay } from '../../core/memory/day.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Ref } from '../../core/unit/refs.ts';
import type { DeckDraft } from '../../core/workshop/draft.ts';
import { placeOf } from '../../core/workshop/place-of.ts';
import type { StoredDraft } from '../../storage/workshop.ts';
import { Sheet } from '../../ui/Sheet.tsx';
import { useServices } from '../services.ts';
import { TroubleNote } from '../TroubleNote.tsx';
import { useLoaded } from '../use-loaded.ts';
import { CautionSection } from './CautionSection.tsx';
import { ChartSection } from './ChartSection.tsx';
import { CodeSection } from './CodeSection.tsx';
import { ControlSection } from './ControlSection.tsx';
import type { Desk } from './desk.ts';
import { Findings } from './Findings.tsx';
import { FitSection } from './FitSection.tsx';
import { FixNote } from './FixNote.tsx';
import { LeverSection } from './LeverSection.tsx';
import { NameSection } from './NameSection.tsx';
import { NoteSection } from './NoteSection.tsx';
import { PublishSection } from './PublishSection.tsx';
import { RevisionSection } from './RevisionSection.tsx';
import { SeatSection } from './SeatSection.tsx';
import { NextSection, SectionList } from './SectionList.tsx';
import { SequenceSection } from './SequenceSection.tsx';
import { ServiceSection } from './ServiceSection.tsx';
import { SolenoidSection } from './SolenoidSection.tsx';
import { StackSection } from './StackSection.tsx';
import { SECTION_IDS, type SectionId } from './sections.ts';
import { TogetherSection } from './TogetherSection.tsx';
import { TrainSection } from './TrainSection.tsx';
import { UnitSection } from './UnitSection.tsx';
import { useDraft, useSettled } from './use-draft.ts';
import { WireSection } from './WireSection.tsx';

/** How long typing rests before what it made is drawn and checked. */
const REST_MS = 200;

interface Props {
  readonly id: string;
  readonly section: string | undefined;
  /** What is put right here: "flag:" and an id, or a reference. */
  readonly about: string | undefined;
  /** The reference whose record stands open. */
  readonly record: string | undefined;
  readonly onChange: () => void;
}

export function DraftScreen({ id, section, about, record, onChange }: Props) {
  const { store, sayFor } = useServices();
  const say = sayFor(null);
  const stored = useLoaded(() => store.workshop.draft(id), id);
  const writer = useLoaded(() => store.workshop.writer(), id);
  if (!stored || !writer) return null;
  if (!stored.ok) return <TroubleNote trouble={stored.error} say={say} />;
  if (!stored.value)
    return (
      <Sheet top={<Link href="/workshop">{say(phrase('app.back'))}</Link>}>
        <p className="note">{say(phrase('workshop.gone'))}</p>
      </Sheet>
    );
  return (
    <Opened
      key={id}
      stored={stored.value}
      writer={writer.ok ? writer.value : ''}
      section={SECTION_IDS.find((known) => known === section) ?? 'unit'}
      about={about}
      record={record}
      onChange={onChange}
    />
  );
}

interface OpenedProps {
  readonly stored: StoredDraft;
  readonly writer: string;
  readonly section: SectionId;
  readonly about: string | undefined;
  /** The reference whose record stands open. */
  readonly record: string | undefined;
  readonly onChange: () => void;
}

function Opened({ stored, writer: known, section, about, record, onChange }: OpenedProps) {
  const { store, now, sayFor } = useServices();
  const start = useMemo(() => JSON.parse(stored.text) as DeckDraft, [stored]);
  const { history, act, saving } = useDraft(stored.id, start);
  const [writer, setWriter] = useState(known);
  const [notesVersion, setNotesVersion] = useState(0);
  const notes = useLoaded(() => store.workshop.notes(), String(notesVersion));
  const draft = history.present;
  const settled = useSettled(draft, REST_MS);
  const check = useMemo(() => checkDraft(settled), [settled]);
  // The deck's own words change while it is written: things are called by their ids.
  const say = sayFor(null);

  const desk: Desk = {
    draft,
    settled,
    check,
    edit: (edit, run) => act({ kind: 'edit', edit, run: run ?? null }),
    replace: (next, run) => act({ kind: 'replace', draft: next, run: run ?? null }),
    endRun: () => act({ kind: 'end-run' }),
    say,
    writer,
    nameWriter: (name) => {
      setWriter(name);
      void store.workshop.nameWriter(name);
    },
    today: dateOfDay(now().day),
    draftId: stored.id,
    notes: notes?.ok ? notes.value : [],
    notesChanged: () => setNotesVersion((before) => before + 1),
    focus: record === undefined ? null : placeOf(start, record as Ref),
  };
  const keys = (event: KeyboardEvent) => {
    if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== 'z') return;
    event.preventDefault();
    act({ kind: event.shiftKey ? 'redo' : 'undo' });
  };
  const content: Record<SectionId, () => React.ReactNode> = {
    unit: () => <UnitSection desk={desk} />,
    chart: () => <ChartSection desk={desk} />,
    train: () => <TrainSection desk={desk} />,
    solenoids: () => <SolenoidSection desk={desk} />,
    lever: () => <LeverSection desk={desk} />,
    seats: () => <SeatSection desk={desk} />,
    stacks: () => <StackSection desk={desk} />,
    fits: () => <FitSection desk={desk} />,
    sequences: () => <SequenceSection desk={desk} />,
    names: () => <NameSection desk={desk} />,
    cautions: () => <CautionSection desk={desk} />,
    controls: () => <ControlSection desk={desk} />,
    wires: () => <WireSection desk={desk} />,
    service: () => <ServiceSection desk={desk} />,
    codes: () => <CodeSection desk={desk} />,
    revisions: () => <RevisionSection desk={desk} />,
    notes: () => <NoteSection desk={desk} />,
    together: () => <TogetherSection desk={desk} />,
    publish: () => <PublishSection desk={desk} onChange={onChange} />,
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: a short way for the keyboard; the keys stand above
    <div onKeyDown={keys}>
      <Sheet
        className="workshop"
        top={
          <>
            <h1>{draft.unit || say(phrase('workshop.unnamed'))}</h1>
            <Link href="/workshop">{say(phrase('app.back'))}</Link>
          </>
        }
      >
        <div className="workshop-keys">
          <button
            type="button"
            className="button plain small"
            aria-disabled={history.past.length === 0}
            onClick={() => act({ kind: 'undo' })}
          >
            {say(phrase('workshop.undo'))}
          </button>
          <button
            type="button"
            className="button plain small"
            aria-disabled={history.future.length === 0}
            onClick={() => act({ kind: 'redo' })}
          >
            {say(phrase('workshop.redo'))}
          </button>
          {typeof saving === 'string' && <span className="aside">{say(phrase(`workshop.${saving}`))}</span>}
        </div>
        {typeof saving !== 'string' && <TroubleNote trouble={saving} say={say} />}
        <div className="workshop-body">
          <SectionList draftId={stored.id} section={section} say={say} />
          <div className="workshop-desk">
            {about !== undefined && (
              <FixNote desk={desk} draftId={stored.id} section={section} about={about} />
            )}
            <Findings desk={desk} draftId={stored.id} section={section} />
            <section id="workshop-section" className="unit-part" aria-labelledby="workshop-heading">
              <h2 id="workshop-heading">{say(phrase(`workshop.section.${section}`))}</h2>
              {content[section]()}
            </section>
            <NextSection draftId={stored.id} section={section} say={say} />
          </div>
        </div>
      </Sheet>
    </div>
  );
}
