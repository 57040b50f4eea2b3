/** Which areas count more in the plan, and which less. */
import { COUNTING, type Counting } from '../../core/assign/assignment.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Area } from '../../core/self-check/areas.ts';
import type { Say } from '../../words/words.ts';

type CountingOfAreas = Readonly<Partial<Record<Area, Counting>>>;

interface Props {
  /** Those that are asked. */
  readonly areas: readonly Area[];
  readonly counting: CountingOfAreas;
  readonly say: Say;
  readonly onChange: (counting: CountingOfAreas) => void;
}

const COUNTINGS = Object.keys(COUNTING) as Counting[];

export function CountingFields({ areas, counting, say, onChange }: Props) {
  const set = (area: Area, value: string) => {
    const { [area]: before, ...others } = counting;
    const chosen = COUNTINGS.find((each) => each === value);
    onChange(chosen ? { ...others, [area]: chosen } : others);
  };
  // Beside nothing else, nothing counts more.
  if (areas.length < 2) return null;
  return (
    <details>
      <summary>{say(phrase('assign.counting'))}</summary>
      <p className="aside">{say(phrase('assign.counting-note'))}</p>
      <div className="fields">
        {areas.map((area) => (
          <label key={area} className="field">
            <span>{say(phrase(`area.${area}`))}</span>
            <select value={counting[area] ?? 'usual'} onChange={({ target }) => set(area, target.value)}>
              {(['double', 'usual', 'half'] as const).map((counts) => (
                <option key={counts} value={counts}>
                  {say(phrase(`counts.${counts}`))}
                </option>
              ))}
            </select>
          </label>
        ))}
      </div>
    </details>
  );
}
