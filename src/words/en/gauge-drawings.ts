/** What is said of instruments that are drawn: their scales, and where they stand on them. */
export const GAUGE_DRAWINGS = {
  'drawing.window': 'Limits',
  'drawing.dial.caption-start': 'Before',
  'drawing.dial.caption-now': 'After',
  'drawing.dial.scale':
    'Face: {division} {unit} a division, {divisions} divisions a turn, numbered clockwise from 0 every {apart}. Counter: numbered 0 to 9, one number a turn.',
  'drawing.dial.start':
    'Small hand of the counter: {on, select, yes {on {turns}} other {between {turns} and {next}}}. Large hand: {past, plural, =0 {on {number}} one {one division past {number}} other {# divisions past {number}}}.',
  'drawing.dial.now':
    'Small hand of the counter: {on, select, yes {on {turns}} other {between {turns} and {next}}}. Large hand: {past, plural, =0 {on {number}} one {one division past {number}} other {# divisions past {number}}}.',
  'drawing.micrometer.scale-mm':
    'Sleeve: a line every millimetre above the datum line, numbered every 5; half-millimetre lines below it. Thimble: {divisions} divisions of {division} mm.',
  'drawing.micrometer.scale-in':
    'Sleeve: a line every 0.025 in, every fourth numbered 1, 2, 3… for tenths. Thimble: {divisions} divisions of {division} in.',
  'drawing.micrometer.sleeve-mm':
    'Uncovered on the sleeve: number {number}{whole, plural, =0 {} one {, one whole-millimetre line after it} other {, # whole-millimetre lines after it}}{half, select, yes {, and the half-millimetre line after the last of them} other {, no half-millimetre line after the last of them}}.',
  'drawing.micrometer.sleeve-in':
    'Uncovered on the sleeve: number {number}{lines, plural, =0 {, no line after it} one {, one line after it} other {, # lines after it}}.',
  'drawing.micrometer.thimble':
    'At the datum line the thimble stands {past, plural, =0 {on {number}} one {one division past {number}} other {# divisions past {number}}}.',
  'drawing.depth.caption-zero': 'Zero of the vernier',
  'drawing.depth.caption-lens': 'Vernier under a lens',
  'drawing.depth.bar': 'bar',
  'drawing.depth.stands':
    '{bar, select, yes {The depth gauge stands on a gauge bar laid across the face; its blade reaches down to the seat.} other {The depth gauge stands on the face; its blade reaches down to the seat.}}',
  'drawing.depth.scale-mm':
    'Main scale: a line every {step} mm, numbered every 10 mm. Vernier: {lines} divisions of {division} mm, numbered in tenths.',
  'drawing.depth.scale-in':
    'Main scale: a line every {step, number, ::.000} in, every fourth numbered 1, 2, 3… for tenths. Vernier: {lines} divisions of {division} in, numbered every 5.',
  'drawing.depth.zero':
    'The zero of the vernier is {on, select, yes {on} other {past}} the main line {lines, plural, =0 {numbered {number}} one {one after number {number}} other {# after number {number}}}.',
  'drawing.depth.vernier':
    'The vernier line that meets a main line is {past, plural, =0 {the one numbered {number}} one {one line after number {number}} other {# lines after number {number}}}.',
  'drawing.window.band': 'Limits: {low} to {high} {unit}.',
  'drawing.window.aim': 'Aimed at: {aim} {unit}.',
  'drawing.window.part': '{label}: {at} {unit}{lit, select, yes {, marked} other {}}.',
} as const;
