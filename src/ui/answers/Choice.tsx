/** One large key: a native tick box or radio whose whole face can be pressed. */
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Say } from '../../words/words.ts';
import { markOf } from './marks.ts';

interface Props {
  readonly kind: 'checkbox' | 'radio';
  readonly group: string;
  readonly label: string;
  readonly picked: boolean;
  readonly right: boolean;
  readonly checked: boolean;
  readonly slim?: boolean;
  readonly onPress: () => void;
  readonly say: Say;
}

export function Choice({ kind, group, label, picked, right, checked, slim, onPress, say }: Props) {
  const mark = markOf(picked, right, checked);
  return (
    <label className={`choice ${slim ? 'slim' : ''} ${mark.className}`}>
      <input type={kind} name={group} checked={picked} disabled={checked} onChange={onPress} />
      <span>{label}</span>
      {mark.key && <span className="choice-mark">{say(phrase(mark.key))}</span>}
    </label>
  );
}
