/** Questions on solenoids, in German: currents, pressure, the unplugged unit. */
export const SOLENOIDS = {
  'solenoid.on': 'voller Strom',
  'solenoid.off': 'kein Strom',
  'solenoid.elements': '{elements}',
  'solenoid.feeds': '{solenoid} (versorgt {elements})',
  'solenoid.feeds-column': 'Versorgt',
  'solenoid.current-column': 'Strom',
  'solenoid.sense':
    '{solenoid} gibt abgesteckt {unplugged, select, full {vollen Druck; Strom nimmt ihn weg} other {keinen Druck; Strom bringt ihn}}.',
  'solenoid.line':
    '{solenoid}: {current, select, on {voller Strom} other {kein Strom}}, also {pressure, select, full {voller Druck} other {kein Druck}} an {elements}.',

  'family.solenoid-elements': 'Schaltelemente aus den Strömen der Magnetventile',
  'solenoid-elements.prompt': 'Das sind die Ströme der Magnetventile. Welche Schaltelemente haben Druck?',
  'solenoid-elements.prompt-lever':
    'Wählhebel in {position}, diese Versorgungen sind also alle frei. Welche Schaltelemente haben Druck?',
  'solenoid-elements.row': 'Druck haben: {elements}.',

  'family.range-solenoids': 'Ströme der Magnetventile für einen Gang',
  'range-solenoids.prompt-lever':
    'Wählhebel in {position}, Gang {range} ist angefordert; seine Zeile ist gezeigt. Welche Magnetventile führen Strom?',
  'range-solenoids.prompt':
    'Gang {range} ist angefordert, seine Zeile ist gezeigt. Welche Magnetventile führen Strom?',

  'family.unplugged': 'Das abgesteckte Getriebe',
  'unplugged.prompt':
    'Der Stecker ist ab, kein Magnetventil hat also Strom. Wählhebel in {position}. Was macht das Getriebe bei laufendem Motor?',
  'unplugged.range': 'treibt in Gang {range}',
  'unplugged.no-drive': 'hat in keinem Gang Kraftschluss',
  'unplugged.tied-up': 'verspannt sich',
  'unplugged.output-held': 'hält den Abtrieb fest',
  'unplugged.other-ratio': 'treibt mit der Übersetzung keines Gangs',
  'unplugged.row': 'Abgesteckt, in {position}, liegt Druck an: {elements}.',
  'unplugged.row-none': 'Abgesteckt, in {position}, hat kein Schaltelement Druck.',
  'unplugged.reason': 'Also: das Getriebe {does}.',
  'unplugged.by-hand': 'In {position} versorgt der Wählschieber von Hand: {elements}.',
  'unplugged.cut': 'In {position} sperrt der Wählschieber die Versorgung von: {elements}.',
} as const;
