/** Share expected to be recalled, day by day to class, with today's drill and without it; below it the minutes. */
import type { Course } from '../../core/plan/prospect.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Say } from '../../words/words.ts';
import './charts.css';

const WIDTH = 360;
const LEFT = 34;
const RIGHT = 350;
const TOP = 22;
const FOOT = 172;
/** Minutes: from here down to there. */
const BARS_TOP = 206;
const BARS_FOOT = 236;
const HEIGHT = 258;

const GRID = [0, 0.25, 0.5, 0.75, 1];

interface Props {
  readonly course: Course;
  readonly skipped: Course;
  readonly say: Say;
}

export const minutesByDay = ({ seconds }: Course): number[] => seconds.map((each) => each / 60);

function Key({ say }: { say: Say }) {
  return (
    <ul className="chart-key">
      {(
        [
          ['chart-line', 'progress.with-today'],
          ['chart-other', 'progress.without-today'],
        ] as const
      ).map(([stroke, words]) => (
        <li key={words}>
          <svg viewBox="0 0 40 8" aria-hidden="true">
            <path d="M0 4H40" className={stroke} />
          </svg>
          {say(phrase(words))}
        </li>
      ))}
    </ul>
  );
}

export function CourseChart({ course, skipped, say }: Props) {
  const last = Math.max(1, course.days.at(-1)!);
  const x = (day: number) => LEFT + ((RIGHT - LEFT) * day) / last;
  const y = (share: number) => FOOT - (FOOT - TOP) * Math.min(1, Math.max(0, share));
  const line = (days: readonly number[], shares: readonly number[]) =>
    days.map((day, i) => `${i === 0 ? 'M' : 'L'}${x(day).toFixed(1)} ${y(shares[i]!).toFixed(1)}`).join('');
  const minutes = minutesByDay(course);
  const most = Math.max(1, ...minutes);
  const bar = Math.min(14, (RIGHT - LEFT) / last - 1);
  const kept = Math.round(100 * course.recalled.at(-1)!);
  const without = Math.round(100 * skipped.recalled.at(-1)!);
  const said = say(phrase('progress.course-said', { kept, skipped: without }));
  return (
    <figure className="unit-part">
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} className="chart" role="img" aria-label={said}>
        <text x={LEFT} y={TOP - 9} className="chart-soft">
          {say(phrase('progress.axis-share'))}
        </text>
        {GRID.map((share) => (
          <g key={share}>
            <path d={`M${LEFT} ${y(share)}H${RIGHT}`} className="chart-grid" />
            <text x={LEFT - 6} y={y(share)} textAnchor="end" dominantBaseline="central">
              {100 * share}
            </text>
          </g>
        ))}
        <path d={`M${LEFT} ${TOP}V${FOOT}H${RIGHT}`} className="chart-edge" />
        <path
          d={line(
            [course.days[0]!, ...skipped.days.filter((day) => day > course.days[0]!)],
            [course.recalled[0]!, ...skipped.recalled.slice(-skipped.days.length)],
          )}
          className="chart-other"
        />
        <path d={line(course.days, course.recalled)} className="chart-line" />
        <text x={LEFT} y={FOOT + 16}>
          {say(phrase('progress.axis-today'))}
        </text>
        <text x={RIGHT} y={FOOT + 16} textAnchor="end">
          {say(phrase('progress.axis-class'))}
        </text>
        {minutes.map((each, i) => (
          <rect
            key={course.days[i]}
            x={x(course.days[i]!)}
            y={BARS_FOOT - ((BARS_FOOT - BARS_TOP) * each) / most}
            width={Math.max(1, bar)}
            height={((BARS_FOOT - BARS_TOP) * each) / most}
            className="chart-bar"
          />
        ))}
        <path d={`M${LEFT} ${BARS_FOOT}H${RIGHT}`} className="chart-edge" />
        <text x={LEFT - 6} y={BARS_TOP} textAnchor="end" dominantBaseline="central">
          {Math.round(most)}
        </text>
        <text x={LEFT} y={BARS_FOOT + 16} className="chart-soft">
          {say(phrase('progress.axis-minutes'))}
        </text>
      </svg>
      <Key say={say} />
      <figcaption>{said}</figcaption>
    </figure>
  );
}
