/** The gear train as far as it is described, drawn while it is typed. */
import { useMemo } from 'react';
import { say as phrase } from '../../core/questions/phrase.ts';
import { drawnTrain, shaftNames, unitToDraw } from '../../core/workshop/train.ts';
import { TrainDiagram } from '../../ui/drawings/TrainDiagram.tsx';
import '../../ui/drawings/drawings.css';
import { useServices } from '../services.ts';
import type { SectionProps } from './desk.ts';

/** The drawing of what is described so far. It is made anew only when the train is another one. */
export function Sketch({ desk }: SectionProps) {
  const { settled, say } = desk;
  const drawn = drawnTrain(settled);
  const text = drawn && JSON.stringify([drawn, settled.unit, shaftNames(settled)]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the text is all that the drawing rests on
  const unit = useMemo(() => {
    if (!drawn) return null;
    return unitToDraw(settled, { train: { ...drawn, shafts: shaftNames(settled) } });
  }, [text]);
  const { sayFor } = useServices();
  if (!unit) return <p className="note">{say(phrase('workshop.nothing-to-draw'))}</p>;
  const counted = unit.deck.train.gearsets.every(({ sun, ring }) => sun.teeth > 0 && ring.teeth > 0);
  return (
    <figure className="dr-figure">
      <TrainDiagram drawing={{ kind: 'train', showTeeth: counted }} unit={unit} say={sayFor(unit)} />
    </figure>
  );
}
