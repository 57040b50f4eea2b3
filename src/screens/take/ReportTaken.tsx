/** A report that was opened as a link: it is kept at once, and the board of its assignment is a tap away. */
import { Link } from 'wouter';
import { say as phrase } from '../../core/questions/phrase.ts';
import { CollectedNote } from '../group/CollectedNote.tsx';
import { collectReport, type ReceivedReport } from '../group/collect.ts';
import { useServices } from '../services.ts';
import { TroubleNote } from '../TroubleNote.tsx';
import { useLoaded } from '../use-loaded.ts';

export function ReportTaken({ received }: { received: ReceivedReport }) {
  const services = useServices();
  const say = services.sayFor(null);
  const collected = useLoaded(() => collectReport(services, received), received.text);
  if (!collected) return null;
  if (!collected.ok) return <TroubleNote trouble={collected.error} say={say} />;
  const { kind, assignment } = collected.value;
  return (
    <>
      <CollectedNote collected={[collected.value]} say={say} />
      {kind !== 'stranger' && (
        <Link href={`/group/${assignment}`} className="button key">
          {say(phrase('group.link'))}
        </Link>
      )}
    </>
  );
}
