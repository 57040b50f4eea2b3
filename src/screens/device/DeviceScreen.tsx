/** This device: its language, how safe it is here, a backup, putting one in, a new phone. */
import { useState } from 'react';
import { Link } from 'wouter';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Received } from '../../exchange/message.ts';
import { Sheet } from '../../ui/Sheet.tsx';
import { Receive } from '../handing/Receive.tsx';
import { useServices } from '../services.ts';
import { BackupPart } from './BackupPart.tsx';
import { KeepingPart } from './KeepingPart.tsx';
import { LanguagePart } from './LanguagePart.tsx';
import { RestoreOffer } from './RestoreOffer.tsx';

export function DeviceScreen({ onChange }: { onChange: () => void }) {
  const say = useServices().sayFor(null);
  const [received, setReceived] = useState<Received | null>(null);
  return (
    <Sheet
      top={
        <>
          <h1>{say(phrase('device.title'))}</h1>
          <Link href="/">{say(phrase('app.back'))}</Link>
        </>
      }
    >
      <LanguagePart say={say} />
      <KeepingPart say={say} />
      <BackupPart say={say} />
      <section className="unit-part">
        <h2>{say(phrase('device.restore'))}</h2>
        {received?.kind === 'backup' && (
          <RestoreOffer key={received.madeAt} received={received} onChange={onChange} />
        )}
        {received && received.kind !== 'backup' && (
          <p className="note" role="status">
            {say(phrase('device.no-backup'))} <Link href="/take">{say(phrase('take.title'))}</Link>
          </p>
        )}
        <Receive say={say} how={phrase('device.restore-how')} onReceived={setReceived} />
      </section>
    </Sheet>
  );
}
