/** Answers in groups of like expectation: expected right against came right, with how far chance may stray. */
import type { Bin, Calibration } from '../../core/plan/calibration.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Say } from '../../words/words.ts';
import './charts.css';

const WIDTH = 300;
const HEIGHT = 300;
const LEFT = 40;
const RIGHT = 288;
const TOP = 22;
const FOOT = 260;

const GRID = [0, 0.25, 0.5, 0.75, 1];
/** Nine in ten. */
const REACH = 1.645;

const percent = (share: number) => Math.round(100 * share);

const x = (share: number) => LEFT + (RIGHT - LEFT) * share;
const y = (share: number) => FOOT - (FOOT - TOP) * Math.min(1, Math.max(0, share));

function Group({ bin, most }: { bin: Bin; most: number }) {
  const side = 7 + 9 * Math.sqrt(bin.count / most);
  const [at, came] = [x(bin.predicted), y(bin.observed)];
  return (
    <>
      <path
        d={`M${at} ${y(bin.predicted - REACH * bin.error)}V${y(bin.predicted + REACH * bin.error)}`}
        className="chart-stray"
      />
      <rect x={at - side / 2} y={came - side / 2} width={side} height={side} className="chart-mark" />
    </>
  );
}

export function CalibrationChart({ calibration, say }: { calibration: Calibration; say: Say }) {
  const { bins } = calibration;
  const most = Math.max(...bins.map(({ count }) => count));
  const lines = bins.map((bin) =>
    say(
      phrase('progress.bin', {
        count: bin.count,
        predicted: percent(bin.predicted),
        observed: percent(bin.observed),
      }),
    ),
  );
  return (
    <figure className="unit-part">
      <svg
        viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
        className="chart"
        role="img"
        aria-label={say(phrase('progress.chart-note'))}
      >
        <text x={LEFT} y={TOP - 9} className="chart-soft">
          {say(phrase('progress.bin-came'))}
        </text>
        {GRID.map((share) => (
          <g key={share}>
            <path d={`M${LEFT} ${y(share)}H${RIGHT}M${x(share)} ${TOP}V${FOOT}`} className="chart-grid" />
            <text x={LEFT - 6} y={y(share)} textAnchor="end" dominantBaseline="central">
              {100 * share}
            </text>
            <text x={x(share)} y={FOOT + 16} textAnchor="middle">
              {100 * share}
            </text>
          </g>
        ))}
        <path d={`M${LEFT} ${TOP}V${FOOT}H${RIGHT}`} className="chart-edge" />
        <path d={`M${x(0)} ${y(0)}L${x(1)} ${y(1)}`} className="chart-other" />
        {bins.map((bin) => (
          <Group key={bin.low} bin={bin} most={most} />
        ))}
        <text x={RIGHT} y={FOOT + 34} textAnchor="end" className="chart-soft">
          {say(phrase('progress.bin-axis'))}
        </text>
      </svg>
      <figcaption className="aside">{say(phrase('progress.chart-note'))}</figcaption>
      <details>
        <summary>{say(phrase('progress.as-list'))}</summary>
        <ul className="steps">
          {lines.map((line, i) => (
            <li key={bins[i]!.low}>{line}</li>
          ))}
        </ul>
      </details>
    </figure>
  );
}
