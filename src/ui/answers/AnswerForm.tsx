/** The answer space of a question, in the form it asks for. Taps change a draft; only Check judges it. */
import type { Draft } from '../../core/questions/draft.ts';
import type { Answer, AnswerSpace } from '../../core/questions/question.ts';
import type { Say } from '../../words/words.ts';
import { Choices } from './Choices.tsx';
import { NumberEntry } from './NumberEntry.tsx';
import { OrderPlaces } from './OrderPlaces.tsx';
import { PlaceSpots } from './PlaceSpots.tsx';
import { GridCells, PairRows } from './Rows.tsx';

export interface AnswerProps<F extends AnswerSpace['form']> {
  readonly space: Extract<AnswerSpace, { form: F }>;
  readonly draft: Extract<Draft, { form: F }>;
  readonly onChange: (draft: Draft) => void;
  readonly say: Say;
  /** The right answer, once checked; the form is then only read. */
  readonly right?: Extract<Answer, { form: F }> | undefined;
}

interface Props {
  readonly space: AnswerSpace;
  readonly draft: Draft;
  readonly onChange: (draft: Draft) => void;
  readonly say: Say;
  readonly right?: Answer | undefined;
}

export function AnswerForm(props: Props) {
  // The form of space, draft and right answer is one and the same: a question is built so.
  switch (props.space.form) {
    case 'set':
    case 'one':
      return <Choices {...(props as AnswerProps<'set' | 'one'>)} />;
    case 'order':
      return <OrderPlaces {...(props as AnswerProps<'order'>)} />;
    case 'number':
      return <NumberEntry {...(props as AnswerProps<'number'>)} />;
    case 'pair':
      return <PairRows {...(props as AnswerProps<'pair'>)} />;
    case 'fill':
      return <GridCells {...(props as AnswerProps<'fill'>)} />;
    case 'place':
      return <PlaceSpots {...(props as AnswerProps<'place'>)} />;
  }
}
