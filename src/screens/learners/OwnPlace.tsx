/** What one learner does with his own place: a PIN, and all his answers in a file. */
import { Link } from 'wouter';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { KnownLearner, Registry } from '../../storage/learners/registry.ts';
import type { Say } from '../../words/words.ts';
import { useServices } from '../services.ts';
import { SaveAnswers } from './SaveAnswers.tsx';
import { SetPin } from './SetPin.tsx';

const PIN_WORDS = {
  set: phrase('own.pin-set'),
  off: phrase('own.pin-off'),
  isSet: phrase('own.pin-is-set'),
  isOff: phrase('own.pin-is-off'),
};

interface Props {
  readonly learner: KnownLearner;
  readonly registry: Registry;
  readonly say: Say;
}

export function OwnPlace({ learner, registry, say }: Props) {
  const { store, now } = useServices();
  return (
    <section className="frame">
      <h2>{say(phrase('own.title', { name: learner.name }))}</h2>
      <section className="unit-part learner-part">
        <h3>{say(phrase('own.pin'))}</h3>
        <p>{say(phrase('own.pin-does'))}</p>
        <p>{say(phrase(learner.hasPin ? 'own.pin-some' : 'own.pin-none'))}</p>
        <SetPin
          say={say}
          has={learner.hasPin}
          words={PIN_WORDS}
          tryPin={(pin) => registry.tryPin(learner.id, pin, now().at)}
          setPin={(pin) => registry.setPin(learner.id, pin)}
        />
      </section>
      <section className="unit-part learner-part">
        <h3>{say(phrase('own.data'))}</h3>
        <p>{say(phrase('own.data-note'))}</p>
        <SaveAnswers
          label={phrase('own.data-save')}
          name={learner.name}
          storeOf={async () => ({ ok: true, value: store })}
          say={say}
        />
        <p>
          <Link href="/device" className="button plain">
            {say(phrase('device.link'))}
          </Link>
        </p>
      </section>
    </section>
  );
}
