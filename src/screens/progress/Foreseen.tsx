/** How well answers were foreseen, and whether this learner's own pace of forgetting foresees them better. */
import { useMemo } from 'react';
import type { Ledger } from '../../core/ledger/ledger.ts';
import { WEIGHTS } from '../../core/memory/recall.ts';
import { type Calibration, calibrationOf } from '../../core/plan/calibration.ts';
import type { PersonalScale } from '../../core/plan/personal.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import { pass } from '../../core/result.ts';
import { CalibrationChart } from '../../ui/charts/CalibrationChart.tsx';
import type { Say } from '../../words/words.ts';
import { useServices } from '../services.ts';
import { useLoaded } from '../use-loaded.ts';

/** Fewer answers say nothing. */
const LEAST_ANSWERS = 20;

const percent = (share: number) => Math.round(100 * share);
const nats = (value: number) => value.toFixed(2);

function Told({ calibration, say }: { calibration: Calibration; say: Say }) {
  const { answers, bins, rmse, logLoss, plainLogLoss } = calibration;
  const mean = (of: 'predicted' | 'observed') =>
    bins.reduce((sum, bin) => sum + bin[of] * bin.count, 0) / answers;
  return (
    <>
      <p>
        {say(
          phrase('progress.foreseen', {
            answers,
            predicted: percent(mean('predicted')),
            observed: percent(mean('observed')),
          }),
        )}{' '}
        {say(phrase('progress.gap', { points: percent(rmse) }))}
      </p>
      <CalibrationChart calibration={calibration} say={say} />
      <p className="aside">
        {say(
          phrase('progress.surprise', {
            own: nats(logLoss),
            plain: nats(plainLogLoss),
            helps: logLoss < plainLogLoss ? 'yes' : 'no',
          }),
        )}
      </p>
    </>
  );
}

function ScaleTold({ personal, say }: { personal: PersonalScale; say: Say }) {
  const { evidence, adopted, scale } = personal;
  if (!evidence) return <p>{say(phrase('progress.scale-too-few'))}</p>;
  return (
    <>
      <p>
        {say(
          adopted
            ? phrase('progress.scale-adopted', { times: Math.exp(scale.first).toFixed(1) })
            : phrase('progress.scale-kept'),
        )}
      </p>
      <p className="aside">
        {say(
          phrase('progress.scale-tested', {
            fitted: evidence.fitted,
            heldOut: evidence.heldOut,
            usual: evidence.usual.toFixed(3),
            personal: evidence.personal.toFixed(3),
            error: evidence.error.toFixed(3),
          }),
        )}
      </p>
    </>
  );
}

interface Props {
  readonly deck: string;
  /** Under the usual weights. */
  readonly ledger: Ledger;
  /** Null until it is estimated. */
  readonly personal: PersonalScale | null;
  /** It will not come any more. */
  readonly ended: boolean;
  readonly say: Say;
}

export function Foreseen({ deck, ledger, personal, ended, say }: Props) {
  const weights = personal?.weights ?? WEIGHTS;
  const { store } = useServices();
  const own = useLoaded(
    async () => (weights === WEIGHTS ? pass(ledger) : store.ledgerOf(deck, weights)),
    [deck, ledger.latest?.id, ...weights].join(' '),
  );
  const { observations } = own?.ok ? own.value : ledger;
  const calibration = useMemo(() => calibrationOf(observations), [observations]);
  return (
    <>
      <section className="unit-part">
        <h2>{say(phrase('progress.calibration'))}</h2>
        {calibration && calibration.answers >= LEAST_ANSWERS ? (
          <Told calibration={calibration} say={say} />
        ) : (
          <p>{say(phrase('progress.too-few'))}</p>
        )}
      </section>
      <section className="unit-part">
        <h2>{say(phrase('progress.scale'))}</h2>
        {personal ? (
          <ScaleTold personal={personal} say={say} />
        ) : (
          <p className="aside">{say(phrase(ended ? 'progress.scale-not-here' : 'progress.scale-waiting'))}</p>
        )}
      </section>
    </>
  );
}
