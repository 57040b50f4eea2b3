/** Questions on what a fault does, in German: to ranges, to pressure, to torque, to figures. */
export const FAULT_EFFECTS = {
  'before-after.sound': 'in Ordnung',
  'before-after.fault': 'mit dem Fehler',
  'before-after.line': 'Gang {range}: {does}.',

  'family.solenoid-stuck': 'Gänge, wenn ein Magnetventil klemmt',
  'solenoid-stuck.prompt-off':
    '{solenoid} versorgt {elements}. Es klemmt, als hätte es keinen Strom, was auch angefordert ist. Was macht jeder Gang, wenn der Motor zieht?',
  'solenoid-stuck.prompt-on':
    '{solenoid} versorgt {elements}. Es klemmt, als hätte es vollen Strom, was auch angefordert ist. Was macht jeder Gang, wenn der Motor zieht?',
  'solenoid-stuck.row-full': 'So klemmend gibt {solenoid} immer vollen Druck.',
  'solenoid-stuck.row-none': 'So klemmend gibt {solenoid} nie Druck.',
  'solenoid-stuck.reason-full':
    'Also ist {elements} überall geschlossen, wo der Wählhebel die Versorgung frei lässt, ob der Gang es will oder nicht.',
  'solenoid-stuck.reason-none':
    'Also ist {elements} nie geschlossen, außer wenn der Wählhebel von Hand versorgt.',

  'family.one-way-reversed': 'Gänge, wenn ein Freilauf verkehrt herum sitzt',
  'one-way-reversed.prompt':
    '{element} wurde verkehrt herum eingebaut. Was macht jeder Gang, wenn der Motor zieht?',
  'one-way-reversed.reason':
    'Verkehrt herum lässt er los, wo er sperren soll, und sperrt, wo seine Wellen frei laufen sollen.',

  'family.supply-lost': 'Was Druck hat, wenn eine Versorgung ausfällt',
  'supply-lost.prompt':
    'Gang {range} ist angefordert{lever, select, some {, Wählhebel in {position}} other {}}. Die Versorgung {supply} ist ausgefallen; an ihr hängen {solenoids}. Welche Schaltelemente haben dann Druck?',
  'supply-lost.hangs': 'Magnetventil',
  'supply-lost.charted': 'im heilen Getriebe',
  'supply-lost.on-it': 'an dieser Versorgung',
  'supply-lost.not-on-it': 'an einer anderen Versorgung',
  'supply-lost.row': 'Druck an: {elements}.',
  'supply-lost.reason':
    'Alle Magnetventile der Versorgung verlieren ihren Strom zugleich. Jedes gibt dann, was es abgesteckt gibt, soweit Wählhebel und Verriegelungen es lassen.',

  'family.sensor-lost': 'Größen, die mit einem Drehzahlsensor verloren gehen',
  'sensor-lost.prompt':
    '{sensor} liest die Drehzahl von {shaft} und gibt kein Signal mehr; die anderen Sensoren sind in Ordnung. Welche Größen lassen sich daraus nicht mehr ausrechnen?',
  'sensor-lost.row': 'Verloren: {figures}.',
  'sensor-lost.reason':
    'Eine Größe ist verloren, wenn eine der Drehzahlen, die sie braucht, nicht mehr gelesen wird.',
  'speed-figure.input-speed': 'Antriebsdrehzahl',
  'speed-figure.output-speed': 'Abtriebsdrehzahl',
  'speed-figure.ratio': 'die Übersetzung, in der das Getriebe wirklich ist',
  'speed-figure.slip': 'Schlupf der Schaltelemente',
  'speed-figure.shift-time': 'wie lange eine Schaltung dauert',
  'speed-figure.converter-slip': 'Schlupf des Wandlers (die Motordrehzahl kommt vom Motor)',
  'speed-figure.road-speed': 'Fahrgeschwindigkeit aus dem Getriebe',
  'speed-figure-needs.input-speed': 'Antriebsdrehzahl: ihr eigener Sensor.',
  'speed-figure-needs.output-speed': 'Abtriebsdrehzahl: ihr eigener Sensor.',
  'speed-figure-needs.ratio': 'Übersetzung: Antrieb durch Abtrieb.',
  'speed-figure-needs.slip': 'Schlupf: Antrieb weniger Abtrieb mal Übersetzung.',
  'speed-figure-needs.shift-time':
    'Dauer einer Schaltung: wie lange die Übersetzung für den Wechsel braucht, also beide.',
  'speed-figure-needs.converter-slip': 'Schlupf des Wandlers: Motor weniger Antrieb.',
  'speed-figure-needs.road-speed': 'Fahrgeschwindigkeit: Abtrieb.',

  'family.slips-first': 'Was zuerst rutscht, wenn der Druck sinkt',
  'slips-first.prompt':
    'Der Druck sinkt überall um den gleichen Anteil, und der Motor zieht so stark wie immer. In welcher Reihenfolge beginnen diese zu rutschen? Die Tabelle sagt, was jedes bei vollem Druck hält und was es halten muss.',
  'slips-first.item': '{element} in Gang {range}',
  'slips-first.holds': 'hält',
  'slips-first.asks': 'muss halten',
  'slips-first.torque': '{torque} N·m',
  'slips-first.first': 'rutscht zuerst',
  'slips-first.last': 'rutscht zuletzt',
  'slips-first.row': 'Zuerst: {element} in Gang {range}.',
  'slips-first.reason':
    'Teile, was es hält, durch das, was es halten muss: wo am wenigsten Reserve ist, rutscht es zuerst. Was es halten muss, ist bei dem Drehmoment gerechnet, das dem schwächsten im Getriebe 15 % Reserve lässt; das Drehmoment, für das das Getriebe wirklich gebaut ist, kann ein anderes sein.',
  'slips-first.line': '{element} in Gang {range}: {holds} ÷ {asks} = {margin}.',

  'family.plate-short': 'Ein Schaltelement mit einer Lamelle zu wenig',
  'plate-short.prompt':
    '{element} hält {holds} N·m mit seinen {plates} Belaglamellen. Gebaut wurde es mit {left}. Die Tabelle sagt, was es in jedem Gang trägt. Bei welchem Drehmoment am Antrieb rutscht der erste dieser Gänge darauf? Bis {tolerance} N·m Abweichung gilt als richtig.',
  'plate-short.carries': 'trägt, bei 100 N·m am Antrieb',
  'plate-short.row': '{left} von {plates} Lamellen halten {left}/{plates} von {holds} N·m: {short} N·m.',
  'plate-short.reason':
    'Gang {range} verlangt am meisten, {share} N·m bei 100 am Antrieb: {short} ÷ {share} × 100 = {answer} N·m.',
  'plate-short.line': 'Gang {range}: {share} bei 100, rutscht also bei {torque} N·m am Antrieb.',
} as const;
