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
} as const;
