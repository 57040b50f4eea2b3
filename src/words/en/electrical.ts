/** Questions on windings, sensors and wires. */
export const ELECTRICAL = {
  'electrical.ohms': '{ohms} Ω',
  'electrical.open': 'open',
  'electrical.degrees': '{celsius} °C',
  'electrical.band': '{low} to {high} Ω',
  'electrical.reading-at': '{ohms} Ω at {celsius} °C',
  'electrical.place-low': 'below the band',
  'electrical.place-in': 'within the band',
  'electrical.place-high': 'above the band',
  'electrical.solenoid-pin': '{solenoid} (pin {pin})',

  'family.heat-pairs': 'Resistance and heat',
  'heat-pairs.prompt':
    '{part}: its resistance was read at several temperatures and got mixed up. Which belongs to which?',
  'heat-pairs.winding': 'Copper winding of {solenoid}',
  'heat-pairs.row-falls': 'The hotter, the less it measures.',
  'heat-pairs.row-rises': 'The hotter, the more it measures.',
  'heat-pairs.reason-sensor': 'Temperature sensors are made both ways; the deck says which this one is.',
  'heat-pairs.reason-copper': 'Copper always measures more when it is hotter.',

  'family.winding-at-heat': 'A winding warm and cold',
  'winding-at-heat.prompt-warm':
    'The copper winding of {solenoid} measures {ohms} Ω at 20 °C. Copper changes by 0.393 % of that for each °C. What does it measure at {celsius} °C, in ohms? Two decimals; within {tolerance} is right.',
  'winding-at-heat.prompt-back':
    'The copper winding of {solenoid} measures {ohms} Ω at {celsius} °C. Copper changes by 0.393 % of its value at 20 °C for each °C. What would it measure at 20 °C, in ohms? Two decimals; within {tolerance} is right.',
  'winding-at-heat.factor': 'At {celsius} °C, {over} from 20: 1 + 0.00393 × {over} = {factor}.',
  'winding-at-heat.reason-warm': '{ohms} × {factor} = {value} Ω.',
  'winding-at-heat.reason-back': '{ohms} ÷ {factor} = {value} Ω.',
  'winding-at-heat.percent': 'At {celsius} °C it is {percent} % off its value at 20 °C.',
  'winding-at-heat.copper': 'This goes for the winding alone: leads and connector hardly change.',

  'family.winding-verdict': 'A winding judged by its band',
  'winding-verdict.prompt':
    'The band of {solenoid} is {low} to {high} Ω at 20 °C. Its copper winding was read at other temperatures (0.393 % of the value at 20 °C for each °C). Where does each reading lie, brought back to 20 °C?',
  'winding-verdict.row': 'Divide each reading by 1 + 0.00393 × (temperature − 20), then look at the band.',
  'winding-verdict.reason': 'The band, {low} to {high} Ω, is for 20 °C and for nothing else.',
  'winding-verdict.line': '{ohms} Ω at {celsius} °C: {ohms} ÷ {factor} = {at20} Ω at 20 °C, {place}.',

  'family.pin-pairs': 'Ohms between two pins',
  'pin-pairs.prompt':
    'Read to the common pin {common}: {one} {first} Ω, {other} {second} Ω. What does the meter show between the pins of the two solenoids, in ohms? Within {tolerance} is right.',
  'pin-pairs.row': '{first} + {second} = {sum} Ω.',
  'pin-pairs.reason':
    'From the one pin through its winding to where pin {common} comes in, and from there through the other winding: one after the other.',
  'pin-pairs.parallel':
    'Side by side they would be {parallel} Ω, less than either: that is not the way here.',

  'family.winding-fault': 'Which fault the readings show',
  'winding-fault.prompt':
    'Windings that share pin {common}, read at 20 °C with the leads taken off{case, select, unread {; nothing was read to the case} other {}}. Which of these fit all the readings?',
  'winding-fault.band': 'Band',
  'winding-fault.to-common': 'To pin {common}',
  'winding-fault.to-case': 'To the case',
  'winding-fault.sound': 'no fault',
  'winding-fault.open': '{one}: winding or wire broken',
  'winding-fault.turns-shorted': '{one}: some turns bridged',
  'winding-fault.shorted': '{one}: bridged from end to end',
  'winding-fault.high-resistance': '{one}: a bad joint in its wire',
  'winding-fault.to-ground': '{one}: its pin touches the case',
  'winding-fault.pins-joined': '{one} and {other}: pins joined',
  'winding-fault.common-open': 'pin {common}: wire broken',
  'winding-fault.common-to-ground': 'pin {common} touches the case',
  'winding-fault.row': 'A fault fits when every reading is what it would give, and none speaks against it.',
  'winding-fault.reason-case':
    'To the common pin each winding shows itself; to the case everything is open until something touches it.',
  'winding-fault.reason-no-case':
    'To the common pin each winding shows itself. What touches the case does not show there at all.',
  'winding-fault.reason-ground': 'To the common pin each winding shows itself.',
  'winding-fault.fits': 'Fits: {fault}. {would}',
  'winding-fault.does-not-fit': 'Does not fit: {fault}. {would}',
  'winding-fault.would-sound': 'Every winding within its band, to the common pin and nowhere else.',
  'winding-fault.would-open': 'That winding open, the others within their bands.',
  'winding-fault.would-turns-shorted': 'That winding below its band, the others within.',
  'winding-fault.would-shorted': 'That winding at nothing, the others within their bands.',
  'winding-fault.would-high-resistance': 'That winding above its band, the others within.',
  'winding-fault.would-to-ground':
    'Every winding within its band; that pin at nothing to the case, the others there through two windings.',
  'winding-fault.would-pins-joined':
    'Both at the same reading, less than either alone: they lie side by side.',
  'winding-fault.would-common-open': 'Every winding open to pin {common}.',
  'winding-fault.would-common-to-ground':
    'Every winding within its band, to pin {common} and to the case alike.',

  'family.solenoid-current': 'Current of a solenoid',
  'solenoid-current.prompt-full':
    '{solenoid} measures {ohms} Ω and gets {volts} V, driver drop left out. What current flows when it is on for good, in amperes? Two decimals; within {tolerance} is right.',
  'solenoid-current.prompt-mean':
    '{solenoid} measures {ohms} Ω and is switched fast, on for {percent} % of the time, at {volts} V. A freewheel path keeps the current flowing; driver drop and ripple are left out. What is the mean current, in amperes? Two decimals; within {tolerance} is right.',
  'solenoid-current.row': '{volts} V ÷ {ohms} Ω = {amperes} A when it is on.',
  'solenoid-current.reason-full': 'Volts over ohms are amperes.',
  'solenoid-current.reason-mean': '{percent} % of {full} A = {amperes} A.',
  'solenoid-current.holds':
    'It is the mean because the freewheel path lets the current run on while the driver is off.',

  'family.driver-pin': 'Voltage on a driver’s pin',
  'driver-pin.prompt-low':
    '{solenoid} is fed with battery voltage; the controller switches its low side. What is on the controller’s pin, measured against ground?',
  'driver-pin.prompt-high':
    '{solenoid} is grounded at its other end; the controller switches its high side. What is on the controller’s pin, measured against ground?',
  'driver-pin.pin': 'On the pin',
  'driver-pin.case-sound': 'driver {driver}, wire sound',
  'driver-pin.case-open': 'driver {driver}, wire broken',
  'driver-pin.case-short-to-ground': 'driver {driver}, wire touches ground',
  'driver-pin.case-short-to-supply': 'driver {driver}, wire touches battery voltage',
  'driver-pin.driver-off': 'off',
  'driver-pin.driver-on': 'on',
  'driver-pin.level-supply': 'battery voltage',
  'driver-pin.level-ground': '0 V',
  'driver-pin.level-floating': 'nothing holds it',
  'driver-pin.row-low':
    'Off, the winding brings battery voltage to the pin; on, the driver pulls the pin to ground.',
  'driver-pin.row-high':
    'Off, the winding holds the pin at ground; on, the driver puts battery voltage on it.',
  'driver-pin.reason':
    'With the wire broken only the driver is left to hold the pin; a wire that touches something is held by that.',
  'driver-pin.line':
    '{case}: {level}{powered, select, yes {, current flows in the winding} other {}}{overloaded, select, yes {, and the driver works against the short} other {}}.',

  'family.sensor-frequency': 'Speed and frequency',
  'sensor-frequency.prompt-hertz':
    '{sensor} sits over a wheel of {teeth} teeth on {shaft} and gives one pulse for each tooth. The shaft turns at {given} rpm. How many pulses a second is that, in Hz? Within {tolerance} is right.',
  'sensor-frequency.prompt-rpm':
    '{sensor} sits over a wheel of {teeth} teeth on {shaft} and gives one pulse for each tooth. It gives {given} Hz. How fast does the shaft turn, in rpm? Within {tolerance} is right.',
  'sensor-frequency.row-hertz': '{teeth} × {given} ÷ 60 = {value} Hz.',
  'sensor-frequency.row-rpm': '{given} × 60 ÷ {teeth} = {value} rpm.',
  'sensor-frequency.reason':
    '{teeth} pulses for a turn; 60 is there because speed is by the minute and frequency by the second.',
} as const;
