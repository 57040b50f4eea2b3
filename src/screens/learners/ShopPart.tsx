/** What concerns everybody on the device: names, idle time, the shop's PIN, wiping. Behind the shop's PIN where one is set. */
import { useState } from 'react';
import { say as phrase } from '../../core/questions/phrase.ts';
import { IDLE_CHOICES, type IdleMinutes } from '../../storage/learners/idle.ts';
import type { Listing, Registry } from '../../storage/learners/registry.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import type { Say } from '../../words/words.ts';
import { useServices } from '../services.ts';
import { TroubleNote } from '../TroubleNote.tsx';
import { NamesSection } from './NamesSection.tsx';
import { PinForm } from './PinForm.tsx';
import { SetPin } from './SetPin.tsx';
import { WipeSection } from './WipeSection.tsx';

const PIN_WORDS = {
  set: phrase('shop.pin-set'),
  off: phrase('shop.pin-take'),
  isSet: phrase('shop.pin-is-set'),
  isOff: phrase('shop.pin-gone'),
};

interface Props {
  readonly listing: Listing;
  readonly registry: Registry;
  readonly here: string | undefined;
  readonly say: Say;
}

function IdleChoice({ listing, registry, say }: Omit<Props, 'here'>) {
  const [trouble, setTrouble] = useState<StoreTrouble | null>(null);
  const choose = async (minutes: IdleMinutes) => {
    const set = await registry.setIdleMinutes(minutes);
    setTrouble(set.ok ? null : set.error);
  };
  return (
    <section className="unit-part learner-part">
      <h3>{say(phrase('shop.idle'))}</h3>
      <fieldset className="answer">
        <legend>{say(phrase('shop.idle-field'))}</legend>
        <div className="choices">
          {IDLE_CHOICES.map((minutes) => (
            <label key={minutes} className="choice">
              <input
                type="radio"
                name="idle"
                checked={listing.idleMinutes === minutes}
                onChange={() => void choose(minutes)}
              />
              <span>
                {say(minutes === null ? phrase('shop.idle-never') : phrase('shop.idle-choice', { minutes }))}
              </span>
            </label>
          ))}
        </div>
      </fieldset>
      <p className="aside">{say(phrase('shop.idle-note'))}</p>
      {trouble && <TroubleNote trouble={trouble} say={say} />}
    </section>
  );
}

export function ShopPart({ listing, registry, here, say }: Props) {
  const { now } = useServices();
  // Who sets the shop's PIN knows it: only a page that opens with one asks.
  const [open, setOpen] = useState(!listing.hasShopPin);
  const tryPin = (pin: string) => registry.tryShopPin(pin, now().at);
  if (!open)
    return (
      <>
        <p>{say(phrase('shop.locked'))}</p>
        <PinForm title={phrase('pin.shop')} say={say} tryPin={tryPin} onRight={() => setOpen(true)} />
      </>
    );
  return (
    <section className="frame">
      <h2>{say(phrase('shop.title'))}</h2>
      <NamesSection listing={listing} registry={registry} here={here} say={say} />
      <IdleChoice listing={listing} registry={registry} say={say} />
      <section className="unit-part learner-part">
        <h3>{say(phrase('shop.pin'))}</h3>
        <p>{say(phrase('shop.pin-note'))}</p>
        <SetPin
          say={say}
          has={listing.hasShopPin}
          words={PIN_WORDS}
          tryPin={tryPin}
          setPin={(pin) => registry.setShopPin(pin)}
        />
      </section>
      <WipeSection listing={listing} registry={registry} say={say} />
    </section>
  );
}
