/** Everything of the draft that other names and cautions can be about, in the words of the shop. */
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Desk } from './desk.ts';
import type { Option } from './fields.tsx';

type Named = readonly { readonly id?: string | undefined; readonly name?: string | undefined }[] | undefined;

export function thingOptions({ draft, say }: Desk): Option[] {
  const of = (kind: string, list: Named): Option[] =>
    (list ?? []).flatMap(({ id, name }) =>
      id
        ? [
            {
              value: `${kind}:${id}`,
              label: say(
                phrase('workshop.thing', {
                  kind: say(phrase(`place.${kind}`)),
                  id,
                  name: name ?? '',
                  named: name ? 'yes' : 'no',
                }),
              ),
            },
          ]
        : [],
    );
  const steps = (draft.sequences ?? []).flatMap((sequence) =>
    [...(sequence.steps ?? []), ...(sequence.assembly?.added ?? [])].flatMap(({ id, text }) =>
      id && sequence.id
        ? [
            {
              value: `step:${sequence.id}/${id}`,
              label: say(
                phrase('workshop.thing', {
                  kind: say(phrase('place.step')),
                  id: text || id,
                  name: '',
                  named: 'no',
                }),
              ),
            },
          ]
        : [],
    ),
  );
  return [
    ...of('element', draft.train?.elements),
    ...of('gearset', draft.train?.gearsets),
    ...of('range', draft.chart?.ranges),
    ...of('neutral', draft.chart?.neutral),
    ...of('solenoid', draft.solenoids),
    ...of('position', draft.lever?.positions),
    ...of('sensor', draft.sensors),
    ...of('part', draft.shaftLine),
    ...of('seat', draft.seats),
    ...of('stack', draft.stacks),
    ...of('fit', draft.fits),
    ...of('sequence', draft.sequences),
    ...steps,
    ...of('fluid', draft.fluids),
    ...of('torque', draft.torques),
    ...of('weight', draft.weights),
    ...of('code', draft.codes),
  ];
}
