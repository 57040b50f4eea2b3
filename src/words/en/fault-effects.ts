/** Questions on what a fault does: to ranges, to pressure, to torque, to figures. */
export const FAULT_EFFECTS = {
  'before-after.sound': 'sound',
  'before-after.fault': 'with the fault',
  'before-after.line': 'Range {range}: {does}.',

  'family.solenoid-stuck': 'Ranges when a solenoid is stuck',
  'solenoid-stuck.prompt-off':
    '{solenoid} feeds {elements}. It is stuck as if it had no current, whatever is commanded. What does each range do, with the engine pulling?',
  'solenoid-stuck.prompt-on':
    '{solenoid} feeds {elements}. It is stuck as if it had full current, whatever is commanded. What does each range do, with the engine pulling?',
  'solenoid-stuck.row-full': 'Stuck like that, {solenoid} always gives full pressure.',
  'solenoid-stuck.row-none': 'Stuck like that, {solenoid} never gives pressure.',
  'solenoid-stuck.reason-full':
    'So {elements} is on wherever the lever leaves its feed open, whether the range wants it or not.',
  'solenoid-stuck.reason-none': 'So {elements} is never on, unless the lever feeds it by hand.',

  'family.one-way-reversed': 'Ranges when a one-way is fitted backward',
  'one-way-reversed.prompt':
    '{element} was fitted the wrong way round. What does each range do, with the engine pulling?',
  'one-way-reversed.reason':
    'Fitted backward it lets go where it should hold, and holds where its shafts should run free.',

  'family.supply-lost': 'What has pressure when a supply is lost',
  'supply-lost.prompt':
    'Range {range} is commanded{lever, select, some {, lever in {position}} other {}}. The supply {supply}, which {solenoids} share, is lost. Which elements have pressure then?',
  'supply-lost.hangs': 'solenoid',
  'supply-lost.charted': 'in the sound unit',
  'supply-lost.on-it': 'on this supply',
  'supply-lost.not-on-it': 'on another supply',
  'supply-lost.row': 'Pressure at {elements}.',
  'supply-lost.reason':
    'All solenoids of the supply lose their current at once. Each then gives what it gives unplugged, as far as the lever and interlocks let it.',

  'family.sensor-lost': 'Figures lost with a speed sensor',
  'sensor-lost.prompt':
    '{sensor} reads the speed of {shaft} and gives no signal any more; the other sensors are sound. Which figures can no longer be worked out from them?',
  'sensor-lost.row': 'Lost: {figures}.',
  'sensor-lost.reason': 'A figure is lost when one of the speeds it needs is no longer read.',
  'speed-figure.input-speed': 'input speed',
  'speed-figure.output-speed': 'output speed',
  'speed-figure.ratio': 'the ratio the unit is really in',
  'speed-figure.slip': 'slip of the elements',
  'speed-figure.shift-time': 'how long a shift takes',
  'speed-figure.converter-slip': 'slip of the converter (engine speed comes from the engine)',
  'speed-figure.road-speed': 'road speed from the transmission',
  'speed-figure-needs.input-speed': 'Input speed: its own sensor.',
  'speed-figure-needs.output-speed': 'Output speed: its own sensor.',
  'speed-figure-needs.ratio': 'Ratio: input by output.',
  'speed-figure-needs.slip': 'Slip: input less output times ratio.',
  'speed-figure-needs.shift-time': 'Time of a shift: how long the ratio takes to go over, so both.',
  'speed-figure-needs.converter-slip': 'Slip of the converter: engine less input.',
  'speed-figure-needs.road-speed': 'Road speed: output.',

  'family.slips-first': 'What slips first as pressure sinks',
  'slips-first.prompt':
    'Pressure sinks everywhere by the same share, and the engine pulls as hard as ever. In which order do these begin to slip? The table says what each holds at full pressure, and what it has to hold.',
  'slips-first.item': '{element} in range {range}',
  'slips-first.holds': 'holds',
  'slips-first.asks': 'has to hold',
  'slips-first.torque': '{torque} N·m',
  'slips-first.first': 'slips first',
  'slips-first.last': 'slips last',
  'slips-first.row': 'First: {element} in range {range}.',
  'slips-first.reason':
    'Divide what it holds by what it has to hold: the least of it to spare slips first. What it has to hold is reckoned at the torque that leaves the weakest of the unit 15 % in hand; the torque the unit is really built for may be another.',
  'slips-first.line': '{element} in range {range}: {holds} ÷ {asks} = {margin}.',

  'family.plate-short': 'An element built with a plate too few',
  'plate-short.prompt':
    '{element} holds {holds} N·m with its {plates} friction plates. It was built with {left}. The table says what it carries in each range. At which torque on the input does the first of these ranges slip on it? Within {tolerance} N·m is right.',
  'plate-short.carries': 'carries, for 100 N·m on the input',
  'plate-short.row': '{left} of {plates} plates hold {left}/{plates} of {holds} N·m: {short} N·m.',
  'plate-short.reason':
    'Range {range} asks most of it, {share} N·m for 100 on the input: {short} ÷ {share} × 100 = {answer} N·m.',
  'plate-short.line': 'Range {range}: {share} for 100, so it slips at {torque} N·m on the input.',
} as const;
