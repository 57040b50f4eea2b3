/** Which screen stands where, and what each needs: the chosen deck, its log, the drill under way. */
import { Suspense, useState } from 'react';
import { Route, Router, Switch, useLocation } from 'wouter';
import { useHashLocation } from 'wouter/use-hash-location';
import type { Assignment } from '../core/assign/assignment.ts';
import type { Ledger } from '../core/ledger/ledger.ts';
import { type Drill, type DrillItem, isOver, startDrill, stepOf } from '../core/memory/drill.ts';
import { say as phrase } from '../core/questions/phrase.ts';
import type { Unit } from '../core/unit/unit.ts';
import type { Asked } from '../screens/drill/asked.ts';
import { DrillScreen } from '../screens/drill/DrillScreen.tsx';
import { type Services, useServices } from '../screens/services.ts';
import { TroubleNote } from '../screens/TroubleNote.tsx';
import { useLoaded } from '../screens/use-loaded.ts';
import { whenPainted } from '../screens/when-painted.ts';
import type { Practice } from '../storage/rows.ts';
import type { StoreTrouble } from '../storage/trouble.ts';
import { Sheet } from '../ui/Sheet.tsx';
import type { FirstQuestion } from './first-question.ts';
import { later } from './later.ts';
import { openPractice } from './open-practice.ts';

const TodayScreen = later(async () => (await import('../screens/today/TodayScreen.tsx')).TodayScreen);
const EndScreen = later(async () => (await import('../screens/drill/EndScreen.tsx')).EndScreen);
const UnitScreen = later(async () => (await import('../screens/unit/UnitScreen.tsx')).UnitScreen);
const DecksScreen = later(async () => (await import('../screens/decks/DecksScreen.tsx')).DecksScreen);

const CaseScreen = later(async () => (await import('../screens/case/CaseScreen.tsx')).CaseScreen);
const SelfCheckScreen = later(
  async () => (await import('../screens/self-check/SelfCheckScreen.tsx')).SelfCheckScreen,
);
const AssignScreen = later(async () => (await import('../screens/assign/AssignScreen.tsx')).AssignScreen);
const GroupScreen = later(async () => (await import('../screens/group/GroupScreen.tsx')).GroupScreen);
const PrintScreen = later(async () => (await import('../screens/print/PrintScreen.tsx')).PrintScreen);
const MakeUpScreen = later(async () => (await import('../screens/print/MakeUpScreen.tsx')).MakeUpScreen);
const MarksScreen = later(async () => (await import('../screens/print/MarksScreen.tsx')).MarksScreen);
const ReportScreen = later(async () => (await import('../screens/report/ReportScreen.tsx')).ReportScreen);
const DeviceScreen = later(async () => (await import('../screens/device/DeviceScreen.tsx')).DeviceScreen);
const TakeScreen = later(async () => (await import('../screens/take/TakeScreen.tsx')).TakeScreen);
const WorkshopScreen = later(
  async () => (await import('../screens/workshop/WorkshopScreen.tsx')).WorkshopScreen,
);
const ProgressScreen = later(
  async () => (await import('../screens/progress/ProgressScreen.tsx')).ProgressScreen,
);
const PreviewScreen = later(async () => (await import('../screens/preview/PreviewScreen.tsx')).PreviewScreen);
const LearnersScreen = later(
  async () => (await import('../screens/learners/LearnersScreen.tsx')).LearnersScreen,
);

/** What the practice screens stand on. */
export interface Opened {
  readonly unit: Unit;
  readonly ledger: Ledger;
  /** The assignment that is practised for, where one was taken in. */
  readonly assignment: Assignment | undefined;
  readonly practice: Practice;
  readonly drill: Drill | undefined;
  /** The question at hand in the drill, unless it is over. */
  readonly asked: Asked | null;
}

interface DrillUnderWay extends Omit<FirstQuestion, 'store'> {
  /** Undefined while the log is being read. */
  readonly ledger?: Ledger;
  /** Tells a question that was kept, and is another by now, from the one in its place. */
  readonly mark?: string;
}

/** What is opened tells more than the look ahead, which only serves until then. */
function drillUnderWay(
  { sayFor }: Services,
  opened: Awaited<ReturnType<typeof openPractice>> | undefined,
  first: FirstQuestion | undefined,
): DrillUnderWay | undefined {
  if (!opened) return first;
  const { unit, drill, asked, ledger } = (opened.ok && opened.value) || {};
  if (!unit || !drill || !asked || !ledger) return undefined;
  const isOther = first && JSON.stringify(first.asked.question) !== JSON.stringify(asked.question);
  // The sentences in sight stay as they are while their question does.
  if (!isOther) return { say: first?.say ?? sayFor(unit), unit, drill, asked, ledger };
  const isInItsPlace = first.drill.id === drill.id && first.drill.index === drill.index;
  return {
    say: sayFor(unit),
    unit,
    // What was entered there was entered for the other.
    drill: isInItsPlace ? { ...drill, draft: null } : drill,
    asked,
    ledger,
    mark: 'anew',
  };
}

function DrillPlace({
  unit,
  say,
  drill,
  asked,
  ledger,
  mark,
  reload,
}: DrillUnderWay & { reload: () => void }) {
  const { store } = useServices();
  const [, go] = useLocation();
  const leave = (left: Drill) => {
    // The first drill that was gone through is the moment when there is something worth keeping.
    if (isOver(left)) void store.askPersistence();
    go(isOver(left) ? '/done' : '/');
    reload();
  };
  return (
    <DrillScreen
      key={`${drill.id}/${stepOf(drill)}/${mark ?? ''}`}
      unit={unit}
      say={say}
      stored={drill}
      first={asked}
      worked={ledger?.worked}
      onLeave={leave}
      onReload={reload}
    />
  );
}

function PracticeScreens({ opened, reload }: { opened: Opened; reload: () => void }) {
  const { store, now, newId, sayFor } = useServices();
  const [path, go] = useLocation();
  const [trouble, setTrouble] = useState<StoreTrouble | null>(null);
  const { unit, ledger, practice, drill } = opened;
  const say = sayFor(unit);
  const waiting = drill && !isOver(drill) ? drill : undefined;

  const start = async (items: readonly DrillItem[]) => {
    const { at, day } = now();
    const begun = startDrill({ id: newId(), deck: unit.deck, day, minutes: practice.minutes, items, at });
    const saved = await store.beginDrill(begun);
    if (!saved.ok) return setTrouble(saved.error);
    go('/drill');
    reload();
  };
  const close = async () => {
    if (drill) await store.endDrill(drill.id);
    go('/');
    reload();
  };

  if (path === '/done' && drill)
    return <EndScreen unit={unit} say={say} drill={drill.id} onClose={() => void close()} />;
  return (
    <>
      {trouble && <TroubleNote trouble={trouble} say={say} />}
      <TodayScreen
        key={unit.deck.id}
        unit={unit}
        say={say}
        ledger={ledger}
        assignment={opened.assignment}
        practice={practice}
        waiting={waiting}
        onStart={(items) => void start(items)}
        onResume={() => go('/drill')}
        onPractice={(changed) => void store.setPractice(unit.deck.id, changed).then(reload)}
      />
    </>
  );
}

function Opening() {
  const { sayFor } = useServices();
  return <p className="sheet aside">{sayFor(null)(phrase('app.loading'))}</p>;
}

function Screens({ first }: { first: FirstQuestion | undefined }) {
  const services = useServices();
  const [path] = useLocation();
  const ahead = first?.store === services.store ? first : undefined;
  const [version, setVersion] = useState(0);
  const reload = () => setVersion((before) => before + 1);
  const fresh = useLoaded(async () => {
    if (ahead && version === 0) {
      await whenPainted();
      // What is opened may have more to say. Where the words do not come, the question stands without them.
      await services.loadWords().catch(() => {});
    }
    return openPractice(services);
  }, String(version));
  // What was open stays on the page while it is read again.
  const [kept, setKept] = useState(fresh);
  if (fresh && fresh !== kept) setKept(fresh);
  const opened = fresh ?? kept;
  const underWay = path === '/drill' ? drillUnderWay(services, opened, ahead) : undefined;
  if (underWay) return <DrillPlace {...underWay} reload={reload} />;
  if (!opened) return <Opening />;
  if (!opened.ok) {
    const say = services.sayFor(null);
    return (
      <Sheet top={<strong>Detent</strong>}>
        <TroubleNote trouble={opened.error} say={say} />
        <button type="button" className="button key" onClick={reload}>
          {say(phrase('app.reload'))}
        </button>
      </Sheet>
    );
  }
  const { value } = opened;
  return (
    <Suspense fallback={<Opening />}>
      <Switch>
        <Route path="/decks">
          <DecksScreen inUse={value?.unit.deck.id} onChange={reload} />
        </Route>
        <Route path="/workshop/*?">
          <WorkshopScreen onChange={reload} />
        </Route>
        <Route path="/unit">
          {value && <UnitScreen unit={value.unit} say={services.sayFor(value.unit)} />}
        </Route>
        <Route path="/case">
          {value && <CaseScreen unit={value.unit} say={services.sayFor(value.unit)} />}
        </Route>
        <Route path="/self-check">
          {value && <SelfCheckScreen unit={value.unit} say={services.sayFor(value.unit)} />}
        </Route>
        <Route path="/progress">
          {value && (
            <ProgressScreen
              unit={value.unit}
              say={services.sayFor(value.unit)}
              ledger={value.ledger}
              assignment={value.assignment}
              practice={value.practice}
            />
          )}
        </Route>
        <Route path="/preview">
          {value && <PreviewScreen unit={value.unit} say={services.sayFor(value.unit)} />}
        </Route>
        <Route path="/assign">
          {value && <AssignScreen unit={value.unit} say={services.sayFor(value.unit)} />}
        </Route>
        <Route path="/group/:id?">{({ id }) => <GroupScreen wanted={id} />}</Route>
        <Route path="/print">
          {value && <PrintScreen unit={value.unit} say={services.sayFor(value.unit)} />}
        </Route>
        <Route path="/print/make-up/:assignment/:learner">{(place) => <MakeUpScreen {...place} />}</Route>
        <Route path="/marks/:assignment/:sheet">{(place) => <MarksScreen {...place} />}</Route>
        <Route path="/report">
          {value && <ReportScreen unit={value.unit} say={services.sayFor(value.unit)} onChange={reload} />}
        </Route>
        <Route path="/learners">
          <LearnersScreen />
        </Route>
        <Route path="/device">
          <DeviceScreen onChange={reload} />
        </Route>
        <Route path="/take/:word?">
          {({ word }) => <TakeScreen key={word ?? ''} word={word} onChange={reload} />}
        </Route>
        <Route>
          {value ? (
            <PracticeScreens opened={value} reload={reload} />
          ) : (
            <DecksScreen inUse={undefined} onChange={reload} />
          )}
        </Route>
      </Switch>
    </Suspense>
  );
}

/** `first` is what was found of the drill under way before the page was there. */
export function App({ first }: { first?: FirstQuestion | undefined }) {
  return (
    <Router hook={useHashLocation}>
      <Screens first={first} />
    </Router>
  );
}
